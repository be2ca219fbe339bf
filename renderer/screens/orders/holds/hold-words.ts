import type { Hold } from '../../../../shared/contract/holds.ts';
import type { StepKind } from './ladder.ts';

export const holdLabels: Record<Hold['kind'], string> = {
  customer: 'Waiting for the customer',
  material: 'Waiting for material',
  claim: 'A claim is open',
  other: 'Something else',
};

export const stepLabels: Record<StepKind, string> = {
  sent: 'Reminded',
  next: 'Remind next',
  later: 'Remind again',
  'storage-fee': 'Storage fee counts from here',
  unclaimed: 'Counts as unclaimed from here',
};

export const termsCaution =
  "These days are the shop's own policy. Whether a fee may be asked, and when goods count as unclaimed, the shop's terms and the local law decide: read them before acting on it.";
