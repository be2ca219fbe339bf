import { Button } from '@mantine/core';
import { useState } from 'react';
import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { momentText } from '../../../parts/days.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { holdState } from '../section-states.ts';
import { HoldForm } from './hold-form.tsx';
import { LadderList } from './ladder-list.tsx';
import { OpenHold } from './open-hold.tsx';

function PastHold({ hold }: { hold: HoldDetail }) {
  return (
    <>
      <p className={classes.quiet} style={{ marginTop: 12 }}>
        Was on hold {momentText(hold.since)} to {momentText(hold.releasedAt ?? hold.since)}:{' '}
        {hold.reason}
      </p>
      {hold.reminders.length === 0 ? null : <LadderList hold={hold} />}
    </>
  );
}

/** Whether the order waits, for what, since when, and what was sent meanwhile. */
export function Holds() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  const open = order.holds.find((hold) => hold.releasedAt === null);
  const past = order.holds.filter((hold) => hold.releasedAt !== null);
  const mayAdd = open === undefined && order.card.stage !== 'cancelled';
  return (
    <OrderSection
      place="hold"
      title="Hold"
      state={holdState(order)}
      saysItself
      isBusy={isAdding}
      actions={
        mayAdd && !isAdding ? (
          <Button variant="default" onClick={() => setAdding(true)}>
            Put on hold
          </Button>
        ) : null
      }
    >
      {isAdding || order.holds.length > 0 ? (
        <>
          {isAdding && open === undefined ? <HoldForm onDone={() => setAdding(false)} /> : null}
          {open === undefined ? null : <OpenHold key={open.id} hold={open} />}
          {past.map((hold) => (
            <PastHold key={hold.id} hold={hold} />
          ))}
        </>
      ) : null}
    </OrderSection>
  );
}
