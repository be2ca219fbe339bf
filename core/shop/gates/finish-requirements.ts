import { atWork, onRoute } from './conditions.ts';
import { needsRecord, type Requirement } from './requirement.ts';

/** What a bow needs before anything is put on it. */
export const readyForFinish: readonly Requirement[] = [
  needsRecord('last-grit', (finish) => finish.lastGrit, 'Last grit not recorded.', {
    when: onRoute('strip-sand'),
  }),
  needsRecord('finish-system', (finish) => finish.system, 'No finish chosen.'),
  needsRecord(
    'air',
    (finish) => finish.air,
    'Air not read: inside the sheet, and the surface 3 C (a 5.4 F difference) above dew point.',
  ),
];

/** Batch, lots and window of a coat; the air only of one that is about to be recorded. */
export const coatRequirements: readonly Requirement[] = [
  needsRecord(
    'pot-life',
    (finish) => finish.potLife,
    'No batch of the chosen finish is inside its pot life.',
  ),
  needsRecord(
    'lots-in-date',
    (finish) => finish.lots,
    'No batch whose lots are known to be in date.',
  ),
  needsRecord(
    'recoat-window',
    (finish) => finish.window,
    'Not recorded that the recoat window is open or the coat was scuffed.',
  ),
  needsRecord('air', (finish) => finish.air, 'Air not read before the coat.', {
    when: (facts) => facts.finish.proposed,
  }),
  needsRecord('finish-system', (finish) => finish.system, 'No finish chosen.', {
    when: (facts) => facts.finish.proposed,
  }),
];

export const stringAndFlex = needsRecord(
  'string-and-flex',
  (finish) => finish.stringAndFlex,
  'No coat recorded, nor noted that the time to string and flex has passed.',
  { when: onRoute('finish') },
);

/** A finish that prints its wrapping is as much trouble on the way home as after the work. */
export const safeToWrap = needsRecord(
  'safe-to-wrap',
  (finish) => finish.wrap,
  'No coat recorded, nor noted that the finish is safe to wrap.',
  { when: (facts) => (atWork(facts) ? onRoute('finish')(facts) : facts.coated) },
);
