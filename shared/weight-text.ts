import { type DrawReference, drawReferenceLabels } from './bows.ts';
import { weightAtDraw } from './measure.ts';

/**
 * A weight with the draw it belongs to. Only an AMO draw is written bare, as on a bow;
 * any other reference is named, so that it can never pass for the weight at AMO 28 in.
 */
export function weightText(forceLbf: number, drawIn: number, reference: DrawReference): string {
  const bare = weightAtDraw(forceLbf, drawIn);
  return reference === 'amo' ? bare : `${bare} ${drawReferenceLabels[reference]}`;
}
