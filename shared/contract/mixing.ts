import { between, changed, id, instant, line, rowVersion, text } from '../fields.ts';
import { mixPart } from '../finish.ts';
import { z } from '../zod.ts';
import { coatCount, number, sentence, sentences, wetMil } from './finish-fields.ts';

export const wanted = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('volume'), ml: between(1, 20_000, 'Between 1 and 20,000 mL.') }),
  z.strictObject({ by: z.literal('weight'), g: between(1, 20_000, 'Between 1 and 20,000 g.') }),
  z.strictObject({
    by: z.literal('bows'),
    /** Area from each bow's latest measured limbs, or as typed where they are not measured. */
    orderIds: z.array(id).max(40),
    /** Area of anything else, square inches. */
    moreAreaIn2: between(0, 20_000, 'Between 0 and 20,000 square inches.'),
    coats: coatCount,
    /** null: the middle of the sheet's range. */
    wetMil: wetMil.nullable(),
    leftInGunMl: between(0, 1000, 'Between 0 and 1000 mL.'),
  }),
]);
export type MixWanted = z.infer<typeof wanted>;

const mixLine = z.object({
  part: mixPart,
  /** Of the thing in the stores; empty where none is named on the system. */
  name: line(200),
  ml: number.nullable(),
  g: number.nullable(),
  /** The scale with the cup tared once, after this part; grams. */
  scaleReadsG: number.nullable(),
});
export type MixLine = z.infer<typeof mixLine>;

const lotPick = z.object({
  part: mixPart,
  consumableId: id,
  lotId: id,
  lotNumber: line(120),
  expiresOn: line(10).nullable(),
  quantity: number,
  unit: line(20),
});
export type LotPick = z.infer<typeof lotPick>;

const bowArea = z.object({
  orderId: id,
  number: line(40),
  /** Square inches; null where the limbs were not measured. */
  areaIn2: number.nullable(),
  /** How it was reckoned, or what is missing. */
  sentence,
});

export const mixPlan = z.object({
  lines: z.array(mixLine).max(3),
  readyMl: number.nullable(),
  readyG: number.nullable(),
  /** Where it was reckoned from bows. */
  areas: z.array(bowArea).max(40),
  areaIn2: number.nullable(),
  wetMil: number.nullable(),
  transferPercent: number,
  picks: z.array(lotPick).max(200),
  /** Minutes after mixing; null for what has no pot life. */
  usableFromMin: number.nullable(),
  usableUntilMin: number.nullable(),
  /** Why it cannot be mixed; empty where it can. */
  troubles: sentences,
});
export type MixPlan = z.infer<typeof mixPlan>;

const poured = between(0, 20_000, 'Between 0 and 20,000.').nullable();

export const batch = z.object({
  id,
  rowVersion,
  name: line(120),
  finishSystemId: id,
  systemName: line(120),
  mixedAt: instant,
  mixF: number,
  resinG: poured,
  hardenerG: poured,
  thinnerG: poured,
  resinMl: poured,
  hardenerMl: poured,
  thinnerMl: poured,
  usableFrom: instant,
  usableUntil: instant,
  discardedAt: instant.nullable(),
  discardedWhy: line(400),
  note: text(1000),
  personName: line(120),
  state: z.enum(['standing', 'usable', 'past', 'discarded']),
  lots: z.array(lotPick).max(200),
  cautions: sentences,
});
export type Batch = z.infer<typeof batch>;

export const mixResult = z.discriminatedUnion('outcome', [
  z.object({
    outcome: z.literal('mixed'),
    ...changed.shape,
    name: line(120),
    usableFrom: instant,
    usableUntil: instant,
    picks: z.array(lotPick).max(200),
  }),
  z.object({ outcome: z.literal('refused'), troubles: sentences }),
]);
