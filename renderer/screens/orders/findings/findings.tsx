import { Button } from '@mantine/core';
import { useState } from 'react';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { findingsState } from '../section-states.ts';
import { FindingList } from './finding-list.tsx';

/** What was found on the bow: open ones first, the worst on top. */
export function Findings() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  return (
    <OrderSection
      place="findings"
      title="Findings"
      state={findingsState(order)}
      isBusy={isAdding}
      actions={
        isAdding ? null : (
          <Button variant="default" onClick={() => setAdding(true)}>
            Add a finding
          </Button>
        )
      }
    >
      {isAdding || order.findings.length > 0 ? (
        <FindingList isAdding={isAdding} onAdded={() => setAdding(false)} />
      ) : null}
    </OrderSection>
  );
}
