import type { Gate } from '../../../shared/gates.ts';
import { decimal, difference } from '../../../shared/measure.ts';
import type { Service } from '../../../shared/stages.ts';
import type { GateFacts } from './facts.ts';
import { inscribedWeightTrouble } from './inscribed-weight.ts';
import { needs, needsConsent, needsEntry, type Requirement } from './requirement.ts';

/** Ends this close to the target, pounds; shop policy. Under by more needs the customer's decision. */
export const tolerance = { overLbf: 1, underLbf: 0.5 };

const has = (service: Service) => (facts: GateFacts) => facts.services.includes(service);
const altersBow = (facts: GateFacts) =>
  (['reduce-weight', 'strip-refinish', 're-mark', 'overlay-nock'] as const).some((service) =>
    facts.services.includes(service),
  );
const onRoute = (stage: 'weight-work' | 'strip-sand' | 'finish') => (facts: GateFacts) =>
  facts.route.includes(stage);
const losesWeight = (facts: GateFacts) =>
  has('reduce-weight')(facts) || has('strip-refinish')(facts);
const hasTarget = (facts: GateFacts) => facts.targetLbf !== null && facts.targetDrawIn !== null;

const noOpenStop = needs(
  'no-stop-finding',
  'findings',
  (facts) =>
    facts.openStops === 0
      ? null
      : 'A stop finding is open: repair and look again, or send the bow home unworked. Do not string or draw it.',
  { override: 'never' },
);

const arrivalWeighing = needs(
  'arrival-weighing',
  'weighings',
  (facts) => (facts.arrivalWeighed ? null : 'No arrival weighing on a checked scale.'),
  { override: 'never', opens: 'arrival' },
);

const glassCheck = needs(
  'glass-check',
  'bench-log',
  (facts) => {
    const check = facts.entry('glass-check');
    if (check?.outcome === 'not-ok') return 'The last glass check failed: take nothing more off.';
    if (facts.lastRemovalAt === null) return null;
    const since = check !== null && check.recordedAt > facts.lastRemovalAt;
    return since ? null : 'No glass check since the last bite: unstring and look at the glass.';
  },
  { override: 'never', opens: 'glass-check' },
);

const tillerSinceBite = needs(
  'tiller-read',
  'bench-log',
  (facts) => {
    if (facts.lastRemovalAt === null) return null;
    const since = facts.tillerReadAt !== null && facts.tillerReadAt > facts.lastRemovalAt;
    return since ? null : 'Tiller and string track not read since the last bite.';
  },
  { opens: 'tiller-read' },
);

const weighedAfterSanding = needs(
  'weighed-after-sanding',
  'weighings',
  (facts) => {
    if (!facts.afterSandingWeighed) return 'No weighing after sanding and the last bite.';
    if (!hasTarget(facts)) return null;
    if (facts.afterSandingLbf === null) {
      return `The weighing after sanding was not taken at the target's draw, ${facts.targetDrawIn}" AMO.`;
    }
    const over = difference(facts.afterSandingLbf, facts.targetLbf ?? 0);
    return over > tolerance.overLbf ? `Still ${decimal(over)} lb above the target.` : null;
  },
  { when: losesWeight, opens: 'after-sanding' },
);

const isUndershot = (facts: GateFacts) =>
  facts.targetLbf !== null &&
  facts.afterSandingLbf !== null &&
  difference(facts.targetLbf, facts.afterSandingLbf) > tolerance.underLbf;

/** What was agreed must still stand whenever work begins: withdrawn, or overtaken by an edit, it does not. */
const agreedConsents: Requirement[] = [
  needsConsent('price-and-scope'),
  needsConsent('alteration-acknowledgement', altersBow),
  needsConsent(
    'expected-weight-loss',
    (facts) => has('strip-refinish')(facts) && !has('reduce-weight')(facts),
  ),
];

const inscriptionWritten = needs(
  'inscription',
  'inscription',
  (facts) => (facts.inscription.trim() === '' ? 'No lines given to write on the bow.' : null),
  { override: 'never' },
);

const inscribedWeight = needs(
  'inscription-weight',
  'inscription',
  (facts) => inscribedWeightTrouble(facts.inscription, facts.measured),
  { override: 'never' },
);

const addressKnown = needs('address', 'address', (facts) =>
  facts.shipToKnown ? null : 'No address to ship to.',
);

const coatRequirements: Requirement[] = [
  needsEntry('pot-life', 'Not noted that the batch is inside its pot life.', {
    item: 'pot-life',
  }),
  needsEntry('lots-in-date', 'Not noted that both lots are in date.'),
  needsEntry('recoat-window', 'Not noted that the recoat window is open or the coat was scuffed.'),
];

/**
 * What must be there before a stage is entered or a step is done, and whether the owner may let
 * it pass with a reason. The one place where this is said.
 */
export const gateTable: Record<Gate, readonly Requirement[]> = {
  requested: [],
  'in-mail': [],
  arrived: [
    needs('bow-identified', 'bow', (facts) =>
      facts.bowIdentified ? null : 'The bow is not identified.',
    ),
    needsEntry('arrived-on', 'Not noted when the box was opened.'),
    needsEntry('condition', 'Condition on arrival not recorded.'),
    needsEntry('belongings', 'Belongings not listed.'),
  ],
  agreed: [
    needsEntry('arrival-check', 'Arrival check not complete.'),
    noOpenStop,
    needsConsent('watch-findings', (facts) => facts.openWatches > 0),
    needsEntry('target-feasible', 'Nobody has said that the target can be reached.', {
      when: has('reduce-weight'),
    }),
    needs(
      'target',
      'bow',
      (facts) => (hasTarget(facts) ? null : 'No target weight and draw length.'),
      {
        when: has('reduce-weight'),
      },
    ),
    ...agreedConsents,
  ],
  'weight-work': [
    arrivalWeighing,
    noOpenStop,
    needsEntry('stations', 'No limb widths and thicknesses, nor the wider band accepted.'),
    needsEntry('plan-accepted', 'No weight plan accepted.'),
    needsEntry('bare-glass', 'Not noted that the glass is bare or that no thinning is planned.'),
    ...agreedConsents,
  ],
  bite: [noOpenStop, needsConsent('alteration-acknowledgement'), glassCheck, tillerSinceBite],
  'strip-sand': agreedConsents,
  finish: [
    weighedAfterSanding,
    needsConsent('undershoot', isUndershot),
    needsEntry('last-grit', 'Last grit not recorded.', { when: onRoute('strip-sand') }),
    needsEntry('finish-system', 'No finish chosen.'),
    needsEntry(
      'air',
      'Air not read: inside the sheet, and the surface 3 C (a 5.4 F difference) above dew point.',
    ),
    ...agreedConsents,
  ],
  lettering: [inscriptionWritten, inscribedWeight, needsConsent('marking-approval')],
  'first-clear': [
    needsEntry('lettering-applied', 'Lettering not applied.', { when: has('re-mark') }),
    needsEntry('lettering-dry', 'Lettering not noted as dry.', { when: has('re-mark') }),
    ...coatRequirements,
  ],
  coat: coatRequirements,
  cure: [],
  'final-check': [
    noOpenStop,
    needsEntry('string-and-flex', 'Not noted that the time to string and flex has passed.', {
      when: onRoute('finish'),
    }),
  ],
  packed: [
    noOpenStop,
    needsEntry('final-safety', 'Not flexed twenty times and looked over.', {
      override: 'never',
      sinceLastBite: true,
    }),
    needsEntry('final-looks', 'Finish and markings not looked over.'),
    needsEntry('belongings-back', 'Belongings not ticked back.'),
    needsEntry('paid-or-terms', 'Not paid and no terms noted.'),
    needsEntry('safe-to-wrap', 'Not noted that the finish is safe to wrap.', {
      when: onRoute('finish'),
    }),
  ],
  shipped: [
    needsEntry('carrier-limits', 'Box not checked against the carrier limits.'),
    needsEntry('tracking', 'No tracking number.'),
    addressKnown,
  ],
  collected: [needsEntry('handed-to', 'Not noted who took it.')],
  cancelled: [],
};
