import { glassHowLabels } from '../../../../shared/bows.ts';
import type { GlassLeft, LifeRemoval } from '../../../../shared/contract/bow-life.ts';
import { decimal } from '../../../../shared/measure.ts';
import { fullDay } from '../../../parts/days.ts';

/** Thousandths are as far as a calliper tells. */
export const inches = (value: number, digits = 3): string => `${value.toFixed(digits)} in`;

/** `Removed 3 times here.` */
export function removalsText(count: number): string {
  return count === 1
    ? 'Material was removed once here.'
    : `Material was removed ${count} times here.`;
}

/** One figure where both sides lost alike, else each side by name, seen from the belly. */
export function sidesText({ leftIn, rightIn }: LifeRemoval['widths'][number]): string {
  if (Math.abs(leftIn - rightIn) < 0.0005) return inches(leftIn);
  return `${leftIn.toFixed(3)} left, ${rightIn.toFixed(3)} right`;
}

/** `Upper limb, belly: 2.5 thou, as measured`. */
export function faceLine({ limb, face, thou, isMeasured }: LifeRemoval['faces'][number]): string {
  const how = isMeasured ? 'as measured' : 'not all of it measured';
  return `${limb === 'upper' ? 'Upper' : 'Lower'} limb, ${face}: ${decimal(thou)} thou off, ${how}`;
}

/** `Upper limb, back: 42.5 thou, from 45 measured with the loupe at the limb edge 3 Mar, 2.5 off since`. */
export function glassLine(one: GlassLeft): string {
  const { limb, face, basis, how, measuredOn } = one;
  const where = `${limb === 'upper' ? 'Upper' : 'Lower'} limb, ${face}`;
  const set = one.limbSetName === null ? '' : `${one.limbSetName}, `;
  const day = measuredOn === null ? '' : `, noted ${fullDay(measuredOn)}`;
  const from =
    basis === 'made'
      ? `made with ${decimal(one.fromThou)}`
      : `from ${decimal(one.fromThou)} (${glassHowLabels[how]}${day})`;
  const off =
    one.offSinceThou === 0 ? 'nothing off since' : `${decimal(one.offSinceThou)} off since`;
  return `${set}${where}: ${decimal(one.leftThou)} thou, ${from}, ${off}`;
}

/** What makes the figures look better than the glass is; empty where nothing does. */
export function glassWarning(left: readonly GlassLeft[]): string {
  if (left.some(({ leftThou }) => leftThou <= 0)) {
    return 'By these figures no glass is left on one face: one of them is wrong. Measure it before anything more comes off.';
  }
  const noted = Math.max(0, ...left.map(({ notedSince }) => notedSince));
  if (noted === 0) return '';
  const bites = noted === 1 ? 'One bite since is' : `${noted} bites since are`;
  return `${bites} noted in words only: the glass may be thinner than this.`;
}
