import type { RemovalMethod } from '../../../shared/bench.ts';
import { removalMethodLabels } from '../../../shared/bench.ts';
import { limbs } from '../../../shared/bows.ts';
import type { BenchLimbWork } from '../../../shared/contract/bench-work.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../storage/tables.ts';
import type { LimbWorks } from './removal-drop.ts';

const fraction = (inches: number) => `${inchFraction(inches, 64)}"`;

/** Every width is given both ways: per side and in total. */
function limbWords({ limb, cuts, bellyThou, backThou }: BenchLimbWork): string {
  const left = Math.max(0, ...cuts.map(({ offLeftIn }) => offLeftIn));
  const right = Math.max(0, ...cuts.map(({ offRightIn }) => offRightIn));
  if (left + right > 0) {
    const even = Math.abs(left - right) < 1 / 512;
    const sides = even
      ? `${fraction(left)} per side`
      : `${fraction(left)} left, ${fraction(right)} right`;
    return `${limb} limb ${sides}, ${fraction(left + right)} in total`;
  }
  if (bellyThou + backThou === 0) return `${limb} limb nothing`;
  const thou = (value: number) => `${decimal(value, 2)} thou`;
  if (backThou === 0) return `${limb} limb ${thou(bellyThou)} off the belly`;
  return bellyThou === backThou
    ? `${limb} limb ${thou(bellyThou)} per face, ${thou(bellyThou + backThou)} in total`
    : `${limb} limb ${thou(bellyThou)} off the belly, ${thou(backThou)} off the back`;
}

/** `Narrowed: upper limb 1/64" per side, 1/32" in total; lower limb nothing`. */
export function removalWords(method: RemovalMethod, works: LimbWorks): string {
  return `${removalMethodLabels[method]}: ${limbs.map((limb) => limbWords(works[limb])).join('; ')}`;
}

/** The same from what is stored. */
export function storedRemovalWords(
  row: RemovalRow,
  cuts: readonly RemovalCutRow[],
  faces: readonly RemovalFaceRow[],
): string {
  if (row.method === 'noted') return row.note.replaceAll(/\s+/g, ' ');
  const work = (limb: BenchLimbWork['limb']): BenchLimbWork => {
    const off = (face: 'belly' | 'back') => {
      const at = faces.find(
        (one) => one.removal_id === row.id && one.limb === limb && one.face === face,
      );
      return at?.measured_thou ?? at?.done_thou ?? 0;
    };
    return {
      limb,
      cuts: cuts
        .filter((cut) => cut.removal_id === row.id && cut.limb === limb)
        .map((cut) => ({
          fromFadeIn: cut.from_fade_in,
          widthNowIn: cut.width_before_in ?? 0,
          offLeftIn: cut.done_left_in ?? 0,
          offRightIn: cut.done_right_in ?? 0,
        })),
      bellyThou: off('belly'),
      backThou: off('back'),
    };
  };
  const words = removalWords(row.method, { upper: work('upper'), lower: work('lower') });
  return row.tool === '' ? words : `${words}; with: ${row.tool}`;
}
