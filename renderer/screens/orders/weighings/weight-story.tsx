import { Button } from '@mantine/core';
import { useState } from 'react';
import type { WeightStory as Story } from '../../../../shared/contract/order-card.ts';
import { decimal } from '../../../../shared/measure.ts';
import { Mark } from '../../../parts/mark.tsx';
import { WeightStrip } from '../../../parts/weight-strip.tsx';
import pageClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { weightState } from '../section-states.ts';
import { underText } from './under-text.ts';
import { WeighForm } from './weigh-form.tsx';
import { WeighingTables } from './weighing-rows.tsx';
import classes from './weighings.module.css';

function Numbers({ story }: { story: Story }) {
  const at = story.drawIn === null ? '' : ` lb @ ${decimal(story.drawIn, 2)}" AMO`;
  const shown = [
    ['Arrived', story.arrivalLbf],
    ['Now', story.nowLbf],
    ['Target', story.targetLbf],
  ] as const;
  return (
    <dl className={classes.numbers}>
      {shown.map(([label, lbf]) =>
        lbf === null ? null : (
          <div key={label}>
            <dt>{label}</dt>
            <dd>
              {decimal(lbf)}
              <span className={classes.unit}>{at}</span>
            </dd>
          </div>
        ),
      )}
    </dl>
  );
}

/** Every weighing against the target, and the form for the next one. */
export function WeightStory() {
  const { order, opened, open } = useOrder();
  const { weights, openStops } = order.card;
  const opening = opened.weighings;
  const barred =
    (openStops > 0 && 'A stop finding is open. Do not string or draw this bow.') ||
    (order.bow === null && 'Identify the bow before it is weighed.') ||
    null;
  // Pulls that were made already are not thrown away by a finding that somebody adds meanwhile.
  const [isWeighing, setWeighing] = useState(false);
  const isBegun = opening !== undefined && (barred === null || isWeighing);
  if (isBegun !== isWeighing) setWeighing(isBegun);
  const counted = order.readings.filter((reading) => reading.struckReason === null);
  const under = order.undershoot.now === null ? underText(order.card) : null;
  const isElsewhere = counted.length > 0 && weights.nowLbf === null;
  return (
    <OrderSection
      place="weighings"
      title="Weight"
      state={weightState(order)}
      saysItself
      actions={
        opening === undefined && barred === null ? (
          <Button variant="default" onClick={() => open('weighings')}>
            Weigh
          </Button>
        ) : null
      }
    >
      <Numbers story={weights} />
      <div className={classes.large}>
        <WeightStrip facts={{ ...weights, stopBandLbf: null, forecastLbf: null }} />
      </div>
      {under === null ? null : (
        <p className={pageClasses.words}>
          <Mark kind="attention">{under}</Mark>
        </p>
      )}
      {isElsewhere ? (
        <p>
          Weighed at another draw or reference than {decimal(weights.drawIn ?? 28, 2)}" AMO: not on
          this scale, see the list.
        </p>
      ) : null}
      {barred === null ? null : (
        <p className={pageClasses.words}>
          <Mark kind={openStops > 0 ? 'stop' : 'attention'}>{barred}</Mark>
        </p>
      )}
      {isBegun ? <WeighForm opening={opening} /> : null}
      {order.readings.length === 0 ? (
        <p className={classes.quiet}>No weighing yet. Weigh it as it came, before any work.</p>
      ) : (
        <WeighingTables readings={order.readings} />
      )}
    </OrderSection>
  );
}
