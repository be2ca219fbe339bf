import { decimal, difference } from '../../../shared/measure.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import {
  altersBow,
  atWork,
  both,
  has,
  hasTarget,
  isOvershot,
  isUndershot,
  losesWeight,
} from './conditions.ts';
import { inscribedWeightTrouble } from './inscribed-weight.ts';
import { needs, needsConsent, type Requirement } from './requirement.ts';

export const noOpenStop = needs(
  'no-stop-finding',
  'findings',
  (facts) =>
    facts.openStops === 0
      ? null
      : 'A stop finding is open: repair and look again, or send the bow home unworked. Do not string or draw it.',
  { override: 'never', when: atWork },
);

export const arrivalWeighing = needs(
  'arrival-weighing',
  'weighings',
  (facts) => (facts.arrivalWeighed ? null : 'No arrival weighing on a checked scale.'),
  { override: 'never', opens: 'arrival' },
);

/** Measured limbs, or the words that nobody could measure them and the wider band is accepted. */
export const stations = needs('stations', 'geometry', (facts) =>
  facts.stationsMeasured || facts.entry('stations')?.outcome === 'ok'
    ? null
    : 'Limbs not measured, nor noted in the bench log that the wider band of an unknown section is accepted.',
);

/** A step belongs to its stage: taken elsewhere it would walk round the gate of that stage. */
export const inStage = (...stages: readonly Stage[]): Requirement =>
  needs(
    'stage',
    'bench-log',
    (facts) => {
      if (facts.goingHome !== null) return 'The bow is going home: no work is done on it.';
      if (stages.includes(facts.stage)) return null;
      const names = stages.map((stage) => `"${stageLabels[stage]}"`).join(' or ');
      return `The order stands in "${stageLabels[facts.stage]}"; this is done in ${names}.`;
    },
    { override: 'never' },
  );

export const glassCheck = needs(
  'glass-check',
  'bench-records',
  (facts) => {
    const check = facts.glassCheck;
    if (check?.outcome === 'not-ok') return 'The last glass check failed: take nothing more off.';
    if (facts.lastRemovalAt === null) return null;
    const since = check !== null && check.at > facts.lastRemovalAt;
    return since ? null : 'No glass check since the last bite: unstring and look at the glass.';
  },
  { override: 'never', opens: 'glass-check' },
);

export const tillerSinceBite = needs(
  'tiller-read',
  'bench-records',
  (facts) => {
    if (facts.lastRemovalAt === null) return null;
    const since = facts.tillerReadAt !== null && facts.tillerReadAt > facts.lastRemovalAt;
    return since ? null : 'Tiller and string track not read since the last bite.';
  },
  { opens: 'tiller-read' },
);

/** Nothing is cut on a reading that nobody understands. */
export const surpriseAnswered = needs(
  'surprise',
  'weighings',
  (facts) =>
    facts.openSurprise
      ? 'The last weighing lies far from its forecast: answer the questions about it at the bench, or strike it out and weigh again.'
      : null,
  { override: 'never', opens: 'work' },
);

/** A plan reckoned at the weight bench, or the words that the work is planned by hand. */
export const planAccepted = needs(
  'plan-accepted',
  'bench-log',
  ({ plan, entry }) => {
    if (plan.state === 'fits' || entry('plan-accepted')?.outcome === 'ok') return null;
    return plan.state === 'none'
      ? 'No weight plan accepted at the weight bench, nor noted that the work is planned by hand.'
      : `The accepted weight plan no longer fits: ${plan.why}`;
  },
  { opens: 'plan-accepted' },
);

/** Material cannot be put back: at its target or under, a bow loses no more. */
export const aboveTarget = needs(
  'above-target',
  'weighings',
  (facts) => {
    const now = facts.measured.filter((weight) => weight.drawIn === facts.targetDrawIn).at(-1);
    if (now === undefined || facts.targetLbf === null) return null;
    const over = difference(now.forceLbf, facts.targetLbf);
    if (over > 0) return null;
    const where = over === 0 ? 'at its target' : `${decimal(-over)} lb under its target`;
    return `The bow is ${where}: take nothing more off.`;
  },
  { when: hasTarget, opens: 'work' },
);

export const weighedAfterSanding = needs(
  'weighed-after-sanding',
  'weighings',
  (facts) => {
    if (!facts.afterSandingWeighed) return 'No weighing after sanding and the last bite.';
    if (!hasTarget(facts)) return null;
    if (facts.afterSandingLbf === null) {
      return `The weighing after sanding was not taken at the target's draw, ${facts.targetDrawIn}" AMO.`;
    }
    const over = difference(facts.afterSandingLbf, facts.targetLbf ?? 0);
    return isOvershot(facts) ? `Still ${decimal(over)} lb above the target.` : null;
  },
  { when: losesWeight, opens: 'after-sanding' },
);

/** Weight that is gone cannot be put back: somebody says what is offered, and the customer decides. */
export const undershootDecided: readonly Requirement[] = [
  needs(
    'undershoot-offer',
    'undershoot',
    (facts) =>
      facts.undershootOffered
        ? null
        : 'Below the target, and nobody has said what is offered: keep it, lower the price, or a remedy.',
    { when: isUndershot, override: 'never' },
  ),
  needsConsent('undershoot', isUndershot),
];

/** What was agreed must still stand whenever work begins: withdrawn, or overtaken by an edit, it does not. */
export const agreedConsents: readonly Requirement[] = [
  needsConsent('price-and-scope'),
  needsConsent('alteration-acknowledgement', altersBow),
  needsConsent(
    'expected-weight-loss',
    both(has('strip-refinish'), (facts) => !has('reduce-weight')(facts)),
  ),
];

export const inscriptionWritten = needs(
  'inscription',
  'inscription',
  (facts) => (facts.inscription.trim() === '' ? 'No lines given to write on the bow.' : null),
  { override: 'never' },
);

export const inscribedWeight = needs(
  'inscription-weight',
  'inscription',
  (facts) => inscribedWeightTrouble(facts.inscription, facts.measured, facts.markingRoundLbf),
  { override: 'never' },
);
