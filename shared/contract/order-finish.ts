import { id, instant, line, rowVersion, text } from '../fields.ts';
import { bowSection, cureStep, recoatState, substrate } from '../finish.ts';
import { finishSheet } from '../finish-sheet.ts';
import { missingItem } from '../gates.ts';
import { sizedGrit } from '../grit.ts';
import { z } from '../zod.ts';
import { coat } from './coats.ts';
import { number, sentence, sentences } from './finish-fields.ts';

export const sanding = z.object({
  id,
  rowVersion,
  section: bowSection,
  substrate,
  grit: sizedGrit,
  strokes: z.int().nullable(),
  wiped: z.boolean(),
  isLast: z.boolean(),
  note: text(1000),
  at: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Sanding = z.infer<typeof sanding>;

export const cureTime = z.object({ step: cureStep, at: instant });

/** The recoat window of a bow at this moment. */
export const recoatWindow = z.object({
  state: recoatState,
  sentence,
  heldF: number.nullable(),
  opensAt: instant.nullable(),
  closesAt: instant.nullable(),
  doubts: sentences,
});
export type RecoatWindow = z.infer<typeof recoatWindow>;

const chosenFinish = z.object({
  id,
  rowVersion,
  finishSystemId: id,
  chosenAt: instant,
  personName: line(120),
  /** As it was when it was chosen. */
  sheet: finishSheet,
  /** The system has another sheet by now. */
  sheetChanged: z.boolean(),
  cautions: sentences,
});

export const lastGrit = z.object({
  section: bowSection,
  substrate,
  grit: sizedGrit,
  /** Said to be the last one before finish. */
  isLast: z.boolean(),
  /** About its order of grits and its last grit; advice only. */
  advice: sentences,
});
export type LastGrit = z.infer<typeof lastGrit>;

/** What the records say of an order's finish. */
export const orderFinish = z.object({
  chosen: chosenFinish.nullable(),
  sandings: z.array(sanding).max(1000),
  lastGrits: z.array(lastGrit).max(20),
  /** Newest first, the struck-out ones too. */
  coats: z.array(coat).max(500),
  coatsOn: z.int(),
  lastCoatAt: instant.nullable(),
  surfaces: z
    .array(z.object({ id, at: instant, surfaceF: number, personName: line(120) }))
    .max(500),
  /** In the order they pass; none before the first coat. */
  cure: z.array(cureTime).max(4),
  /** Two-sided film adds its little stiffness; null where no film can be gauged. */
  film: z
    .object({
      /** Dry film on each face, mil. */
      dryMil: number,
      /** More draw weight by this many percent of it. */
      percent: number,
      sentence,
    })
    .nullable(),
});
export type OrderFinish = z.infer<typeof orderFinish>;

export const orderFinishNow = z.object({
  orderId: id,
  ...orderFinish.shape,
  /** Coated before and the sheet says when it may be coated again; null before the first coat. */
  window: recoatWindow.nullable(),
  /** What entering Finish, a coat and the final check still need of the finish. */
  missing: z.array(missingItem).max(100),
  /** Times that have passed. */
  passed: z.array(cureStep).max(4),
  /** The computer's clock stands before the last record; null where it does not. */
  clockTrouble: sentence.nullable(),
});
export type OrderFinishNow = z.infer<typeof orderFinishNow>;
