import type { RoomBow } from '../../../shared/contract/finish.ts';
import { type CureStep, cureStepLabels } from '../../../shared/finish.ts';
import { runningText } from '../../frame/clock-strip/clock-text.ts';
import { momentText } from '../../parts/days.ts';

export interface CureLine {
  step: CureStep;
  isPassed: boolean;
  text: string;
}

/** The four times after the last coat as they stand at this moment, in the order they pass. */
export function cureLines({ cure }: Pick<RoomBow, 'cure'>, nowMs: number): CureLine[] {
  return cure.map(({ step, at }) => {
    const leftMs = Date.parse(at) - nowMs;
    const isPassed = leftMs <= 0;
    const when = isPassed ? `since ${momentText(at)}` : `in ${runningText(leftMs)}`;
    return { step, isPassed, text: `${cureStepLabels[step]} ${when}` };
  });
}

/** Bows that may be strung and flexed first, then those that come next. */
export function byCure(bows: readonly RoomBow[]): RoomBow[] {
  const flexAt = ({ cure }: RoomBow) =>
    cure.find(({ step }) => step === 'stringAndFlex')?.at ?? '9';
  return bows.toSorted(
    (a, b) => flexAt(a).localeCompare(flexAt(b)) || a.number.localeCompare(b.number),
  );
}
