import { z } from '../../../shared/zod.ts';
import { type LimbWork, limbSaid } from './cut-words.ts';

const amount = z.number().min(0).max(100);

/** What was cut, where it was not what the card shows: full cut per side in inches, or thou a face. */
export const biteEntry = z.strictObject({
  other: z.strictObject({ upper: amount, lower: amount }).nullable(),
  phase: z.enum(['card', 'read-back', 'other']),
  /** Why the owner lets it pass with something missing; empty where nothing is. */
  because: z.string().max(400),
});
export type BiteEntry = z.infer<typeof biteEntry>;

export const freshBite: BiteEntry = { other: null, phase: 'card', because: '' };

/** The amount that one limb's work is told by: inches per side, or thousandths a face. */
export function amountOf({ cuts, bellyThou, backThou }: LimbWork): {
  unit: 'inches' | 'thou';
  value: number;
} {
  const side = Math.max(0, ...cuts.flatMap((cut) => [cut.offLeftIn, cut.offRightIn]));
  return side > 0
    ? { unit: 'inches', value: side }
    : { unit: 'thou', value: Math.max(bellyThou, backThou) };
}

/**
 * The same work with its full amount changed; every place keeps its part of it. A limb that was to
 * be left alone is cut as the other one.
 */
export function withAmount(work: LimbWork, value: number, other: LimbWork): LimbWork {
  const { value: own } = amountOf(work);
  const like = own > 0 ? work : other;
  const { value: planned } = amountOf(like);
  const part = planned > 0 ? value / planned : 0;
  return {
    limb: work.limb,
    cuts: like.cuts.map((cut) => ({
      ...cut,
      offLeftIn: cut.offLeftIn * part,
      offRightIn: cut.offRightIn * part,
    })),
    bellyThou: like.bellyThou * part,
    backThou: like.backThou * part,
  };
}

/** What is about to be recorded as cut: `Upper 1/64 in per side, lower nothing.` */
export function biteSaid(upper: LimbWork, lower: LimbWork): string {
  const [up, low] = [limbSaid(upper).big, limbSaid(lower).big];
  const lowly = (text: string) => (text === 'Nothing' ? 'nothing' : text);
  return up === low ? `Both limbs ${lowly(up)}.` : `Upper ${lowly(up)}, lower ${lowly(low)}.`;
}
