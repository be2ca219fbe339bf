import { Button } from '@mantine/core';
import { useState } from 'react';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { FindingForm } from './finding-form.tsx';
import { FindingItem } from './finding-item.tsx';
import { gradeOrder } from './grades.ts';

/** What was found on the bow: open ones first, the worst on top. */
export function Findings() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  const sorted = order.findings.toSorted(
    (a, b) =>
      Number(a.resolvedAt !== null) - Number(b.resolvedAt !== null) ||
      gradeOrder.indexOf(a.grade) - gradeOrder.indexOf(b.grade) ||
      b.foundAt.localeCompare(a.foundAt),
  );
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
      {isAdding ? <FindingForm onDone={() => setAdding(false)} /> : null}
      {sorted.length === 0 && !isAdding ? (
        <p className={classes.quiet}>Nothing found so far.</p>
      ) : null}
      <ul className={classes.list}>
        {sorted.map((finding) => (
          <FindingItem key={finding.id} finding={finding} />
        ))}
      </ul>
    </OrderSection>
  );
}
