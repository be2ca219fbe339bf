import { decimal } from '../../../shared/measure.ts';
import { z } from '../../../shared/zod.ts';
import { type PulledWeight, pulledWeights, weightAt } from './pulls.ts';

/** A weighing as far as it was given; everything but the pulls is prefilled from the last one. */
export const weighEntry = z.strictObject({
  drawIn: z.number().min(5).max(40),
  pulls: z
    .array(z.strictObject({ drawIn: z.number().min(5).max(40), forceLbf: z.number().max(250) }))
    .max(40),
  rigZeroLbf: z.number().min(-10).max(10),
  braceIn: z.number().min(3).max(12),
  scaleId: z.string().max(64).nullable(),
  stringNote: z.string().max(200),
  isReading: z.boolean(),
});
export type WeighEntry = z.infer<typeof weighEntry>;

/** How a pull is named while it is listed. */
export function pullText({ drawIn, forceLbf }: { drawIn: number; forceLbf: number }): string {
  return `${decimal(forceLbf, 2)} lb at ${decimal(drawIn, 2)} in`;
}

/** What is asked for next. The first pull settles the bow and is dropped. */
export function nextPull(entry: WeighEntry, hasScale: boolean): string {
  if (!hasScale) {
    return 'No checked scale is chosen: press Change and choose one, or check it in Settings first.';
  }
  const at = `${decimal(entry.drawIn, 2)} in`;
  const count = entry.pulls.length;
  if (count === 0) return `Pull to ${at} to settle the bow. This first pull is dropped.`;
  const counted = entry.pulls.slice(1).filter(({ drawIn }) => drawIn === entry.drawIn).length;
  if (counted < 2) return `Pull to ${at}: reading ${counted + 1} of 2.`;
  return `Enough pulls at ${at}. Read back, or pull once more.`;
}

/** The weight to read back and the other draws with it; null while too little was pulled. */
export function weighSaid(
  entry: WeighEntry,
  jobDrawIn: number,
): { said: string; others: PulledWeight[]; rangeLbf: number } | null {
  const weight = weightAt(entry.pulls, entry.rigZeroLbf, jobDrawIn);
  if (weight === null) return null;
  const others = pulledWeights(entry.pulls, entry.rigZeroLbf).filter(
    ({ drawIn }) => drawIn !== jobDrawIn,
  );
  const said = `${decimal(weight.forceLbf)} lb at ${decimal(jobDrawIn, 2)} in.`;
  return { said, others, rangeLbf: weight.rangeLbf };
}
