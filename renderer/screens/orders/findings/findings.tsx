import { Button } from '@mantine/core';
import { useState } from 'react';
import { OrderSection } from '../order-section.tsx';
import { FindingList } from './finding-list.tsx';

/** What was found on the bow: open ones first, the worst on top. */
export function Findings() {
  const [isAdding, setAdding] = useState(false);
  return (
    <OrderSection
      place="findings"
      title="Findings"
      actions={
        isAdding ? null : (
          <Button variant="default" onClick={() => setAdding(true)}>
            Add a finding
          </Button>
        )
      }
    >
      <FindingList isAdding={isAdding} onAdded={() => setAdding(false)} />
    </OrderSection>
  );
}
