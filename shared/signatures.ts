import { line } from './fields.ts';
import { z } from './zod.ts';

/** What a person agrees to by signing; shown beside the field and kept with the signature. */
export const intentWords = 'I sign this';

/** The field a signature is drawn in, inches. */
export const signatureBox = { widthIn: 4, heightIn: 1.25 } as const;
/** A dot is no signature: the shortest line of ink in all, inches. */
export const shortestInkIn = 0.25;

const x = z.number().min(0).max(signatureBox.widthIn);
const y = z.number().min(0).max(signatureBox.heightIn);

/** Points from the upper left corner of the box, inches. */
const stroke = z
  .array(z.tuple([x, y]))
  .min(1)
  .max(2000);
export type Stroke = z.infer<typeof stroke>;

export const drawnSignature = z.strictObject({
  manner: z.literal('drawn'),
  intent: z.literal(intentWords),
  strokes: z.array(stroke).min(1, 'Sign in the box.').max(200),
});
export const typedSignature = z.strictObject({
  manner: z.literal('typed'),
  intent: z.literal(intentWords),
  name: line(120).min(3, 'Type the full name.'),
});

/** Length of all strokes, inches. */
export function inkIn(strokes: readonly Stroke[]): number {
  let sum = 0;
  for (const points of strokes) {
    for (const [i, [atX, atY]] of points.entries()) {
      const before = points[i - 1];
      if (before !== undefined) sum += Math.hypot(atX - before[0], atY - before[1]);
    }
  }
  return sum;
}

/** Points kept of one signature in all: about 60 kB of JSON. */
export const mostPoints = 5000;

/** A signature given on this screen: drawn as lines, or the full name typed by who cannot draw. */
export const signature = z
  .discriminatedUnion('manner', [drawnSignature, typedSignature])
  .refine(
    (given) =>
      given.manner === 'typed' ||
      given.strokes.reduce((sum, points) => sum + points.length, 0) <= mostPoints,
    'The signature has too many points. Clear it and sign again.',
  )
  .refine(
    (given) => given.manner === 'typed' || inkIn(given.strokes) >= shortestInkIn,
    'A dot is no signature: sign in the box.',
  );
export type Signature = z.infer<typeof signature>;
