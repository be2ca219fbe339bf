import { type FinalCheck, finalChecks } from '../../../shared/final-checklist.ts';
import { atWork, both, goesHome } from './conditions.ts';
import { needs, needsEntry, type Requirement } from './requirement.ts';

/** A check that applies must be in order, and looked at again after the last bite or coat. */
function finalCheckDone(check: FinalCheck): Requirement {
  return {
    item: check.item,
    applies: (facts) => atWork(facts) && check.applies(facts.checkSubject),
    missing: (facts) => {
      const entry = facts.entry(check.item);
      if (entry === null) return `Final check not done: ${check.label}.`;
      if (facts.lastWorkAt !== null && entry.recordedAt <= facts.lastWorkAt) {
        return `Final check not done since the last bite or coat: ${check.label}.`;
      }
      return entry.outcome === 'ok' ? null : `Final check not in order: ${check.label}.`;
    },
    section: 'final-check',
    opens: check.item,
    override: () => (check.safety ? 'never' : 'owner'),
  };
}

export const finalCheckList: readonly Requirement[] = finalChecks.map(finalCheckDone);

export const belongingsBack = needs('belongings-back', 'final-check', (facts) =>
  facts.belongingsBack ? null : 'Belongings not all ticked back into the box.',
);

export const incidentsSettled = needs('incidents-settled', 'incidents', (facts) =>
  facts.openIncidents === 0
    ? null
    : 'Damage done here is not settled: tell the customer and agree on a remedy.',
);

/** Nothing is open any more, or somebody noted what was agreed about it. */
export const paidOrTerms = needsEntry('paid-or-terms', 'Not paid and no terms noted.', {
  when: ({ balanceCents }) => balanceCents === null || balanceCents > 0,
});

/** A bow sent home unworked goes with what was found on it, in words and pictures. */
export const findingsTold: readonly Requirement[] = [
  needsEntry('findings-told', 'The customer has not been told what was found.', {
    when: both(goesHome, (facts) => facts.anyFinding && !facts.shopsOwn),
  }),
  needs(
    'stop-photographs',
    'findings',
    (facts) => (facts.stopsPictured ? null : 'A stop finding has no photograph.'),
    { when: both(goesHome, (facts) => facts.openStops > 0) },
  ),
];

/** Nobody may find the bow in its box without the warning on it. */
export const warningTag = needs(
  'do-not-draw-tag',
  'papers',
  (facts) =>
    facts.tagSinceStop
      ? null
      : 'The return tag DO NOT STRING OR DRAW was not printed since the stop finding.',
  {
    when: both(goesHome, (facts) => facts.openStops > 0),
    opens: 'return-tag',
    override: 'never',
  },
);

export const parcelReady: readonly Requirement[] = [
  needs('carrier-limits', 'shipping', (facts) => {
    if (facts.parcel === null || !facts.parcel.measured) {
      return 'The packed box is not measured and weighed.';
    }
    if (!facts.parcel.assessed) {
      return 'The packed box was not held against the limits of a carrier.';
    }
    const [first] = facts.parcel.refusals;
    return first === undefined ? null : `The carrier does not take this box. ${first}`;
  }),
  needs('tracking', 'shipping', (facts) =>
    (facts.parcel?.tracking ?? '').trim() === '' ? 'No tracking number.' : null,
  ),
  needs('address', 'address', (facts) => (facts.shipToKnown ? null : 'No address to ship to.')),
];
