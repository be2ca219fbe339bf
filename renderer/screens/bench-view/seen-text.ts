import { decimal } from '../../../shared/measure.ts';
import type { Seen } from './seen.ts';
import { tillerAdvice } from './tiller-words.ts';

/** Stands where there is no number yet. */
export const noNumber = '–';

export interface NumberRow {
  now: string;
  nowNote: string;
  stopAt: string | null;
  target: string | null;
  unit: string;
}

/**
 * The number row. While the bow is on the rig it shows what was pulled so far and no forecast, so
 * that the reader is not led; after a bite that was not weighed yet it says that it is reckoned.
 */
export function numberRow(seen: Seen, pulled: number | null, isWeighing: boolean): NumberRow {
  const { now, stopAtLbf, targetLbf, drawIn } = seen;
  const pounds = (lbf: number | null) => (lbf === null ? null : decimal(lbf));
  return {
    ...(isWeighing ? pulledRow(pulled) : nowRow(now)),
    stopAt: pounds(stopAtLbf),
    target: pounds(targetLbf),
    unit: drawIn === null ? 'lb' : `lb @ ${decimal(drawIn, 2)}"`,
  };
}

const pulledRow = (pulled: number | null) => ({
  now: pulled === null ? noNumber : pulled.toFixed(1),
  nowNote: pulled === null ? 'on the rig' : 'pulled so far',
});

function nowRow(now: Seen['now']) {
  if (now === null) return { now: noNumber, nowNote: 'not weighed' };
  const spread = now.sdLbf === null ? '' : ` ± ${now.sdLbf.toFixed(1)}`;
  return {
    now: now.lbf.toFixed(1),
    nowNote: `${now.isWeighed ? 'weighed' : 'reckoned, not weighed'}${spread}`,
  };
}

/** Tiller beside the cut card: `Tiller: upper strong 1/8 in → more from UPPER`; null where unknown. */
export function tillerLine({ tiller }: Pick<Seen, 'tiller'>): string | null {
  if (tiller?.nowIn == null) return null;
  const { said, more } = tillerAdvice(tiller.nowIn, tiller.targetIn);
  return more === null ? `Tiller ${said}` : `Tiller: ${said} → ${more}`;
}

/** All weights in one line, for the screens that large words fill. */
export function weightLine({ now, told, stopAtLbf, targetLbf, drawIn }: Seen): string | null {
  const at = drawIn === null ? '' : ` @ ${decimal(drawIn, 2)}"`;
  const parts = [
    ...(now === null ? [] : [`Now ${now.lbf.toFixed(1)} lb`]),
    ...(stopAtLbf === null ? [] : [`stop at ${decimal(stopAtLbf)} lb`]),
    ...(targetLbf === null ? [] : [`target ${decimal(targetLbf)} lb${at}`]),
  ];
  const line = parts.length === 0 ? null : `${parts.join(', ')}.`;
  return told === null ? line : [told, line].filter((text) => text !== null).join(' ');
}
