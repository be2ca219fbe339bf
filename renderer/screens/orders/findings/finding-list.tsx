import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { FindingForm } from './finding-form.tsx';
import { FindingItem } from './finding-item.tsx';
import { sortedFindings } from './grades.ts';

interface FindingListProps {
  isAdding: boolean;
  onAdded: () => void;
}

/** What was found on the bow, and the form for one more above it. */
export function FindingList({ isAdding, onAdded }: FindingListProps) {
  const { order } = useOrder();
  const sorted = sortedFindings(order.findings);
  return (
    <>
      {isAdding ? <FindingForm onDone={onAdded} /> : null}
      {sorted.length === 0 && !isAdding ? (
        <p className={classes.quiet}>Nothing found so far.</p>
      ) : null}
      {sorted.length === 0 ? null : (
        <ul className={classes.list}>
          {sorted.map((finding) => (
            <FindingItem key={finding.id} finding={finding} />
          ))}
        </ul>
      )}
    </>
  );
}
