import type { ConsentKind } from '../../../shared/consents.ts';
import type { MergeField, WordingUse } from '../../../shared/wordings.ts';

const scope = 'Work: reduce weight, re-mark\nTarget: 45# @ 28" AMO';

const subjects: Record<ConsentKind, string> = {
  'alteration-acknowledgement': scope,
  'marking-approval':
    'Where on the bow: belly, lower limb, below the fade\nTo be written on the bow:\n45# @ 28"\nAMO 66"',
  'price-and-scope': `${scope}\nPrice: $240.00`,
  'watch-findings': 'upper limb, 6 in from the tip: hairline along the glass edge, does not move',
  'expected-weight-loss': scope,
  undershoot: 'Target: 45# @ 28" AMO\nMeasured: 42.5# @ 28" AMO\nOffer: The price falls by $40.00.',
};

const values: Record<Exclude<MergeField, 'subject'>, string> = {
  shop: 'Example Bow Shop',
  customer: 'A. Customer',
  order: '26-0001',
  bow: 'longbow, maker unknown, 66" AMO, 52# @ 28"',
  work: 'reduce weight, re-mark',
  target: '45# @ 28" AMO',
  total: '$240.00',
  balance: '$120.00',
  deposit: '$120.00',
  weight: '45.2# @ 28" AMO',
  findings: '- upper limb, 6 in from the tip: hairline along the glass edge, does not move',
  asked: 'marking approval and price and scope',
  offer: 'The price falls by $40.00.',
  promised: '2026-05-01',
  carrier: 'the carrier',
  tracking: '0000 0000',
  reason: 'a crack that must not be worked on',
  address: '1 Example Street\nExampletown 00000',
  phone: '555 0100',
  email: 'shop@example.invalid',
};

/** An invented order, to read a wording with. */
export function exampleValues(use: WordingUse): Record<MergeField, string> {
  const kind = use.split(':')[1] ?? '';
  const subject = Object.entries(subjects).find(([each]) => each === kind)?.[1] ?? '';
  return { ...values, subject };
}
