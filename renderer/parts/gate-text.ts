import { type Gate, gateLabels, type Section, stepGates } from '../../shared/gates.ts';
import { type Stage, stageLabels } from '../../shared/stages.ts';

type Step = (typeof stepGates)[number];
const isStep = (gate: Gate): gate is Step => (stepGates as readonly string[]).includes(gate);

/** A gate as a person names it: the stage, or the step of work. */
export function gateText(gate: Gate): string {
  return isStep(gate) ? gateLabels[gate] : stageLabels[gate satisfies Stage];
}

/** What to do in the part of the order page where a missing item is put right. */
export const sectionWords: Record<Section, string> = {
  bow: 'Identify the bow',
  arrival: 'Go to the unpacking table',
  geometry: 'Measure the limbs',
  'bench-records': 'Bites, glass and tiller',
  'bench-log': 'Record it',
  findings: 'Look at the findings',
  weighings: 'Weigh',
  consents: 'Ask, or record the answer',
  inscription: 'Write the lines',
  finish: 'Go to the finish log',
  undershoot: 'Say what is offered',
  incidents: 'Look at the incident',
  'final-check': 'Go through the final check',
  shipping: 'Record the parcel',
  papers: 'Print the tag',
  address: 'Give the address',
};
