import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { daysUntil, fullDay } from '../../../parts/days.ts';
import { Mark, type MarkKind } from '../../../parts/mark.tsx';
import { stepLabels, termsCaution } from './hold-words.ts';
import classes from './holds.module.css';
import { type LadderStep, ladderSteps } from './ladder.ts';

function markOf({ kind, on }: LadderStep): MarkKind | null {
  if (kind === 'sent') return 'done';
  return daysUntil(on) <= 0 ? 'attention' : null;
}

function StepLine({ step }: { step: LadderStep }) {
  const mark = markOf(step);
  const isDue = step.kind !== 'sent' && daysUntil(step.on) <= 0;
  const text = isDue ? `${stepLabels[step.kind]}: due` : stepLabels[step.kind];
  return (
    <li className={classes.step}>
      <span className={classes.day}>{fullDay(step.on)}</span>
      <span>
        {mark === null ? text : <Mark kind={mark}>{text}</Mark>}
        {step.words === '' ? null : <span className={classes.words}>{step.words}</span>}
      </span>
    </li>
  );
}

/** The days of a hold in one list: what was sent, what comes next, fee and unclaimed goods. */
export function LadderList({ hold }: { hold: HoldDetail }) {
  const steps = ladderSteps(hold);
  if (steps.length === 0) return <p className={classes.quiet}>No day is set to remind on.</p>;
  const hasTerms = hold.storageFeeOn !== null || hold.abandonedOn !== null;
  return (
    <>
      <ol className={classes.ladder} aria-label="Days of this hold">
        {steps.map((step) => (
          <StepLine key={step.id} step={step} />
        ))}
      </ol>
      {hasTerms && hold.releasedAt === null ? (
        <p className={classes.caution}>{termsCaution}</p>
      ) : null}
    </>
  );
}
