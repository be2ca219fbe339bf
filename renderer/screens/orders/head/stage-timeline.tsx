import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import { closedStages, stageLabels } from '../../../../shared/stages.ts';
import { dayOf, fullDay, sinceText } from '../../../parts/days.ts';
import classes from './order-head.module.css';
import { type TimelineStage, timelineOf } from './timeline.ts';

function dateWords({ stage, state, enteredAt }: TimelineStage): string {
  if (state === 'ahead') return '';
  const day = enteredAt === null ? 'gate passed' : fullDay(dayOf(enteredAt));
  if (state === 'passed' || closedStages.includes(stage)) return day;
  const since = enteredAt === null ? '' : sinceText(enteredAt);
  return since === 'today' ? 'here since today' : `here ${since}, since ${day}`;
}

/** The stages of this order's route with the days it entered them. */
export function StageTimeline({ order }: { order: OrderDetail }) {
  return (
    <ol className={classes.stages} aria-label="Stages of this order">
      {timelineOf(order).map((step) => (
        <li
          key={step.stage}
          className={`${classes.stage} ${classes[step.state] ?? ''}`}
          aria-current={step.state === 'current' ? 'step' : undefined}
        >
          {stageLabels[step.stage]}
          <span className={classes.date}>{dateWords(step)}</span>
        </li>
      ))}
    </ol>
  );
}
