import type { Bow } from '../../../shared/contract/bows.ts';
import type { readingPhases } from '../../../shared/contract/readings.ts';
import { type Gate, gateLabels, stepGates } from '../../../shared/gates.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import { bowTitle, markedText } from '../bows/bow-text.ts';

export type ReadingPhase = (typeof readingPhases)[number];

export const phaseLabels: Record<ReadingPhase, string> = {
  arrival: 'Arrival',
  work: 'During the work',
  'after-sanding': 'After sanding',
  final: 'Final',
};

type Step = (typeof stepGates)[number];
const isStep = (gate: Gate): gate is Step => (stepGates as readonly string[]).includes(gate);

/** A gate as a person names it: the stage, or the step of work. */
export function gateText(gate: Gate): string {
  return isStep(gate) ? gateLabels[gate] : stageLabels[gate satisfies Stage];
}

/** One line that tells a bow from the others of its owner. */
export function bowText(bow: Bow): string {
  const serial = bow.serial === '' ? '' : `serial ${bow.serial}`;
  const marked = markedText(bow);
  return [bowTitle(bow), serial, marked === '' ? 'no weight marked' : `marked ${marked}`]
    .filter((part) => part !== '')
    .join(', ');
}
