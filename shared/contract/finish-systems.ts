import { id, line, rowVersion } from '../fields.ts';
import { finishKind } from '../finish.ts';
import { finishSheet } from '../finish-sheet.ts';
import { z } from '../zod.ts';
import { sentences } from './finish-fields.ts';

export const systemFields = {
  sheet: finishSheet,
  /** What it is issued from in the stores; null where it is not kept there. */
  resinId: id.nullable(),
  hardenerId: id.nullable(),
  thinnerId: id.nullable(),
  active: z.boolean(),
};

export const finishSystem = z.object({
  id,
  rowVersion,
  name: line(120),
  kind: finishKind,
  ...systemFields,
  /** Names in the stores, or empty. */
  resinName: line(200),
  hardenerName: line(200),
  thinnerName: line(200),
  /** Of its hazards, at the point of use. */
  cautions: sentences,
});
export type FinishSystem = z.infer<typeof finishSystem>;
