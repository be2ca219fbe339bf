import { weighingCautions } from '../../../shared/bench.ts';
import type { BenchStep } from '../../../shared/contract/bench-work.ts';
import { decimal } from '../../../shared/measure.ts';

const lbf = (value: number) => `${decimal(value)} lb`;

/** The one sentence over a step. `hasTarget`: a weight was agreed for this order. */
export function sentenceOf(step: BenchStep, hasTarget = true): string {
  switch (step.kind) {
    case 'stop-finding':
      return 'Do not string or draw this bow.';
    case 'not-at-bench':
      return 'Nothing is cut at this stage.';
    case 'no-plan':
      return hasTarget
        ? 'No weight plan is accepted yet: make it at the desk.'
        : 'No target weight is agreed: weigh the bow, and note in words what comes off.';
    case 'plan-does-not-fit':
      return 'The plan does not fit any more: plan again at the desk before anything is cut.';
    case 'questions':
      return `${lbf(step.readLbf)} was read, ${lbf(step.expectedLbf)} was expected: answer before anything is cut.`;
    case 'remeasure':
      return step.places.length > 0
        ? 'Measure the cut places again.'
        : 'Measure what came off each face where you can; the rest counts as it was meant.';
    case 'glass-check':
      return 'Unstring the bow and look at the glass.';
    case 'read-tiller':
      return 'String it, flex it, and read tiller and string track.';
    case 'weigh':
      return 'Round the edges, flex the bow and weigh it.';
    case 'weigh-again':
      return step.differs === null
        ? 'Weigh once more: the last step is smaller than what the scale tells.'
        : `Weigh once more: the last weighing says ${lbf(step.differs.lastLbf)}, all of them together ${lbf(step.differs.allLbf)}.`;
    case 'bite':
      return step.isLightPass
        ? `A light pass: about ${lbf(step.forecast.weightLbf)} after it.`
        : `Take this bite: about ${lbf(step.forecast.weightLbf)} after it.`;
    case 'sand-only':
      return step.here
        ? `Cut nothing more: sand, then weigh. About ${lbf(step.forecast.endLbf)} after sanding.`
        : `Stop cutting: sanding takes the rest, to about ${lbf(step.forecast.endLbf)}. Move it to strip & sand.`;
    case 'at-target':
      return `At its target with ${lbf(step.forecast.weightLbf)}: take nothing more off.`;
    case 'undershot':
      return `It ends ${lbf(step.byLbf)} under its target: the customer decides.`;
    case 'limit':
      return 'Take nothing more off: a limit is reached.';
  }
}

const dust =
  'Glass and wood dust: extraction on, and a fitted respirator as its data sheet and your local code ask.';

/** Cautions at the point of use; where a product is handled its own data sheet comes first. */
export function cautionsOf(step: BenchStep): string[] {
  switch (step.kind) {
    case 'stop-finding':
      return ['Do not string or draw it, not even to look.'];
    case 'bite':
      return step.isLightPass
        ? [dust, 'Lengthwise strokes only, both faces alike.']
        : [dust, 'Unstring the bow first. Cut to the line, then stop: material is not put back.'];
    case 'sand-only':
      return step.here
        ? [
            dust,
            'Scrape a thick film first; it spares the glass. No heat gun and no chemical stripper on laminations.',
            'Solvent wipes: follow the data sheet, away from ignition and out of the spray area.',
          ]
        : [];
    case 'weigh':
    case 'weigh-again':
      return [...weighingCautions];
    case 'glass-check':
      return ['Lifted strands cut: gloves on, and never run a bare finger along an edge.'];
    case 'read-tiller':
      return ['Look at both limbs on the string before you draw it even a little.'];
    default:
      return [];
  }
}
