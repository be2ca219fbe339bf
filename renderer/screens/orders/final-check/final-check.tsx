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
  const { order } = useOrder();
  const { stage, openStops, goingHome } = order.card;
  const isStopped = openStops > 0;
  const isNow = checking.includes(stage);
  return (
    <OrderSection
      place="final-check"
      title="Final check"
      state={goingHome === null ? standing(order.finalCheck) : 'not needed, it goes home unworked'}
    >
      {isStopped ? (
        <p role="alert">
          <Mark kind="stop">
            DO NOT STRING OR DRAW: a stop finding is open. Nothing is flexed until it is repaired
            and looked at again.
          </Mark>
        </p>
      ) : null}
      {isNow || goingHome !== null || closedStages.includes(stage) ? null : (
        <p className={orderClasses.quiet}>
          Ticked once the order stands in Final check: before that the finish may not bear
          stringing.
        </p>
      )}
      {goingHome === null ? <CheckList mayTick={isNow && !isStopped} /> : null}
      <BelongingsBack />
    </OrderSection>
  );
}
