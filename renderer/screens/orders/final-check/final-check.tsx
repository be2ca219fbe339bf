import { Button } from '@mantine/core';
import { useState } from 'react';
import { closedStages, type Stage } from '../../../../shared/stages.ts';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { BelongingsBack } from './belongings-back.tsx';
import { standing } from './check-fields.ts';
import { CheckList } from './check-list.tsx';

const checking: readonly Stage[] = ['final-check', 'packed'];

/** The last look before the box is closed. Folded while the bow is far from it. */
export function FinalCheck() {
  const { order, opened } = useOrder();
  const { stage, openStops, goingHome } = order.card;
  const isStopped = openStops > 0;
  const isNow = checking.includes(stage);
  const [isShown, setShown] = useState(false);
  const shown = isNow || isShown || opened['final-check'] !== undefined;
  const { finalCheck } = order;
  return (
    <OrderSection
      place="final-check"
      title="Final check"
      actions={
        isNow ? null : (
          <Button variant="default" aria-expanded={shown} onClick={() => setShown(!isShown)}>
            {isShown ? 'Fold the checklist' : 'Show the checklist'}
          </Button>
        )
      }
    >
      {isStopped ? (
        <p role="alert">
          <Mark kind="stop">
            DO NOT STRING OR DRAW: a stop finding is open. Nothing is flexed until it is repaired
            and looked at again.
          </Mark>
        </p>
      ) : null}
      {goingHome === null ? (
        <p className={orderClasses.quiet}>{standing(finalCheck)}</p>
      ) : (
        <p className={orderClasses.quiet}>
          The bow goes home before its work is done: it needs no final check.
        </p>
      )}
      {shown ? (
        <>
          {isNow || closedStages.includes(stage) ? null : (
            <p className={orderClasses.quiet}>
              Ticked once the order stands in Final check: before that the finish may not bear
              stringing.
            </p>
          )}
          {goingHome === null ? <CheckList mayTick={isNow && !isStopped} /> : null}
          <BelongingsBack />
        </>
      ) : null}
    </OrderSection>
  );
}
