import type { PaperCopy, PaperFormat, PaperGroup } from '../../../shared/papers.ts';

export const formatLabels: Record<PaperFormat, string> = {
  letter: 'Letter',
  a4: 'A4',
  '4x6': '4 x 6 in',
  a6: 'A6',
  long: 'One long page',
  label: 'Label',
};

export const copyLabels: Record<PaperCopy, string> = {
  bench: 'Bench copy',
  office: 'Office copy',
  parcel: 'Parcel copy',
  customer: 'Customer copy',
};

export const groupLabels: Record<PaperGroup, string> = {
  customer: 'For the customer',
  bench: 'For the bench',
  parcel: 'For the parcel',
};
