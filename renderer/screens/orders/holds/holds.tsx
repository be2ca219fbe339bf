import { Button } from '@mantine/core';
import { useState } from 'react';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { fullDay, momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { HoldForm, holdLabels } from './hold-form.tsx';

/** Whether the order waits, for what, and since when. */
export function Holds() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  const release = useOrderCommand(api.orders.release);
  const { hold, id, rowVersion } = order.card;
  const past = order.holds.filter((one) => one.releasedAt !== null);
  return (
    <OrderSection
      place="hold"
      title="Hold"
      actions={
        hold === null && !isAdding ? (
          <Button variant="default" onClick={() => setAdding(true)}>
            Put on hold
          </Button>
        ) : null
      }
    >
      {isAdding && hold === null ? <HoldForm onDone={() => setAdding(false)} /> : null}
      {hold === null ? (
        isAdding ? null : (
          <p className={classes.quiet}>Not on hold.</p>
        )
      ) : (
        <>
          <Mark kind="attention">{holdLabels[hold.kind]}</Mark>
          <p className={classes.words}>{hold.reason}</p>
          <p className={classes.quiet}>
            Since {momentText(hold.since)}.
            {hold.remindOn === null ? '' : ` Remind on ${fullDay(hold.remindOn)}.`}
          </p>
          <CommandError command={release} />
          <Button
            variant="default"
            loading={release.busy}
            onClick={() => void release.run({ id, rowVersion })}
          >
            Release the hold
          </Button>
        </>
      )}
      {past.map((one) => (
        <p key={one.id} className={classes.quiet}>
          Was on hold {momentText(one.since)} to {momentText(one.releasedAt ?? one.since)}:{' '}
          {one.reason}
        </p>
      ))}
    </OrderSection>
  );
}
