import { Button } from '@mantine/core';
import { Link } from 'wouter';
import { decimal } from '../../../shared/measure.ts';
import { Mark } from '../../parts/mark.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { TableStep } from './part.tsx';
import classes from './unpacking.module.css';

/** The arrival weighing is taken on the order's page, where every weighing of the job stands. */
export function WeighStep() {
  const { order } = useOrder();
  const { card } = order;
  const isWeighed = order.readings.some(
    (reading) => reading.phase === 'arrival' && reading.struckReason === null,
  );
  const { arrivalLbf, drawIn } = card.weights;
  return (
    <TableStep title="6  Weigh it as it came" isDone={isWeighed}>
      {isWeighed ? (
        <Mark kind="done">
          {arrivalLbf === null
            ? 'Weighed on arrival'
            : `Weighed on arrival: ${decimal(arrivalLbf)} lb @ ${decimal(drawIn ?? 28, 2)}" AMO`}
        </Mark>
      ) : null}
      {card.openStops > 0 ? (
        <Mark kind="stop">A stop finding is open: it is not drawn, and not weighed.</Mark>
      ) : (
        <>
          <p className={classes.quiet}>
            On the scale in the rig, behind the screen or from the side. Before any work.
          </p>
          <div className={classes.buttons}>
            <Button
              component={Link}
              href={`/orders/${card.id}?open=weighings:arrival`}
              h={56}
              size="md"
              variant="default"
            >
              {isWeighed ? 'Weigh again' : 'Weigh it'}
            </Button>
          </div>
        </>
      )}
    </TableStep>
  );
}
