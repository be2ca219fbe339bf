import { atWork, onRoute } from './conditions.ts';
import { needsOfCoat, needsRecord, type Requirement } from './requirement.ts';

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

/** Of a coat that is about to be recorded: its batch, lots and window, its air and its finish. */
export const coatRequirements: readonly Requirement[] = [
  needsOfCoat('pot-life', (coat) => coat.potLife, 'No batch chosen that is inside its pot life.'),
  needsOfCoat('lots-in-date', (coat) => coat.lots, 'Not known whether its lots are in date.'),
  needsOfCoat(
    'recoat-window',
    (coat) => coat.window,
    'Not known whether the recoat window is open or the coat was scuffed.',
  ),
  needsOfCoat('air', (coat) => coat.air, 'Air not read before the coat.'),
  needsOfCoat('finish-system', (coat) => coat.system, 'No finish chosen.'),
];

export const stringAndFlex = needsRecord(
  'string-and-flex',
  (finish) => finish.stringAndFlex,
  'No coat recorded in the finish room: the time to string and flex counts from the last one.',
  { when: onRoute('finish') },
);

/** A finish that prints its wrapping is as much trouble on the way home as after the work. */
export const safeToWrap = needsRecord(
  'safe-to-wrap',
  (finish) => finish.wrap,
  'No coat recorded in the finish room: the time to wrap counts from the last one.',
  { when: (facts) => (atWork(facts) ? onRoute('finish')(facts) : facts.coated) },
);
