import { expect, test } from 'vitest';
import { jobErrors, rebase } from '../../../renderer/screens/orders/facts/job-fields.ts';
import type { OrderFields } from '../../../shared/contract/orders.ts';

const base: OrderFields = {
  services: ['reduce-weight'],
  targetWeightLbf: 45,
  targetDrawIn: 28,
  tillerTarget: '',
  promisedOn: null,
  estimateCents: 18_000,
  shipTo: '',
  privateNotes: '',
  customerNotes: '',
};

test('what somebody else saved stays, what I changed stays', () => {
  const mine = { ...base, privateNotes: 'call first' };
  const theirs = { ...base, estimateCents: 20_000 };
  expect(rebase(base, mine, theirs)).toEqual({
    job: { ...base, estimateCents: 20_000, privateNotes: 'call first' },
    clashes: [],
  });
});

test('a field that both changed keeps mine and is named', () => {
  const mine = { ...base, targetWeightLbf: 44, services: ['re-mark'] as OrderFields['services'] };
  const theirs = { ...base, targetWeightLbf: 43, services: ['re-mark'] as OrderFields['services'] };
  expect(rebase(base, mine, theirs)).toEqual({ job: mine, clashes: ['targetWeightLbf'] });
});

test('a target needs its weight and its draw', () => {
  expect(jobErrors(base)).toEqual({});
  expect(jobErrors({ ...base, targetWeightLbf: null })).toHaveProperty('targetWeightLbf');
  expect(jobErrors({ ...base, targetDrawIn: null })).toHaveProperty('targetDrawIn');
  expect(jobErrors({ ...base, services: [] })).toEqual({
    services: 'Choose at least one service.',
  });
});
