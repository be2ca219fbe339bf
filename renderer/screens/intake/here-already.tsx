import { Button } from '@mantine/core';
import { Link } from 'wouter';
import type { MissingItem } from '../../../shared/gates.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './intake.module.css';

interface HereAlreadyProps {
  orderId: string;
  missing: readonly MissingItem[];
  onNext: () => void;
}

/** A bow that is here needs no packing advice: it goes to the unpacking table. */
export function HereAlready({ orderId, missing, onNext }: HereAlreadyProps) {
  return (
    <>
      {missing.length === 0 ? (
        <Mark kind="done">It stands in "Arrived". Next: the unpacking table.</Mark>
      ) : (
        <>
          <p style={{ margin: 0 }}>
            It does not count as arrived yet and stays in the mail. Still missing:
          </p>
          <ul style={{ margin: 0, padding: 0, listStyle: 'none' }}>
            {missing.map((item) => (
              <li key={item.item}>
                <Mark kind="attention">{item.sentence}</Mark>
              </li>
            ))}
          </ul>
        </>
      )}
      <div className={classes.buttons}>
        <Button component={Link} href={`/orders/${orderId}/unpacking`}>
          To the unpacking table
        </Button>
        <Button component={Link} href={`/orders/${orderId}`} variant="default">
          Open the order
        </Button>
        <Button variant="default" onClick={onNext}>
          Take in another
        </Button>
      </div>
    </>
  );
}
