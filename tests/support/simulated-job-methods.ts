import type { BiteMethod } from '../../core/limb/workdown/next-bite-candidate.ts';
import type { SimulatedBow } from '../../demo-data/simulated/simulated-bow.ts';

interface Steps {
  upper: number;
  lower: number;
}

/** How the full cut blends out, at the places of `simulatedBow`; a hooked tip is left alone. */
export function partsOf({ kind }: SimulatedBow): readonly number[] {
  return kind === 'recurve' ? [0, 0, 1, 1, 1, 0.5, 0, 0] : [0, 0, 1, 1, 1, 0.75, 0.5, 0];
}

/** Far out an inch of width moves tiller much and weight little. */
function outerPartsOf({ kind }: SimulatedBow): readonly number[] {
  return kind === 'recurve' ? [0, 0, 0, 0.5, 1, 0.5, 0, 0] : [0, 0, 0, 0, 0.5, 1, 1, 0];
}

export function outerNarrowing(bow: SimulatedBow, stepsDone: Steps): BiteMethod {
  const parts = outerPartsOf(bow);
  return { kind: 'narrow', parts: { upper: parts, lower: parts }, stepsDone };
}

export function narrowing(
  bow: SimulatedBow,
  stepsDone: Steps = { upper: 0, lower: 0 },
): BiteMethod {
  const parts = partsOf(bow);
  return { kind: 'narrow', parts: { upper: parts, lower: parts }, stepsDone };
}
