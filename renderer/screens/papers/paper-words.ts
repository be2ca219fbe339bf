import type { Paper } from '../../../shared/contract/papers.ts';

export const paperLabels: Record<Paper['kind'], string> = {
  'work-order': 'Work order',
  'shipping-tag': 'Shipping tag',
};

export const formatLabels: Record<Paper['format'], string> = {
  letter: 'Letter',
  a4: 'A4',
  '4x6': '4 x 6 in',
  a6: 'A6',
};

export const copyLabels: Record<Paper['copy'], string> = {
  bench: 'Bench copy',
  office: 'Office copy',
  parcel: 'Parcel copy',
};

/** Sizes and copies each paper comes in; the first copy is the usual one. */
export const paperChoices: Record<
  Paper['kind'],
  { formats: readonly Paper['format'][]; copies: readonly Paper['copy'][] }
> = {
  'work-order': { formats: ['letter', 'a4'], copies: ['bench', 'office'] },
  'shipping-tag': { formats: ['4x6', 'a6'], copies: ['parcel', 'office'] },
};
