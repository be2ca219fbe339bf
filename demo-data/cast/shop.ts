import type { ContractInputs } from '../../shared/contract/types.ts';
import { usualWaiting } from '../../shared/waiting-policy.ts';

/** The demo shop and the three people who work in it; all of it invented. */
export const demoShop: ContractInputs['setup']['openShop']['shop'] = {
  name: 'Larkmere Bow Bench',
  address: {
    street: '3 Sawpit Row',
    city: 'Larkmere',
    region: 'VT',
    postalCode: '00214',
    country: 'USA',
  },
  phone: '555 0100',
  email: 'bench@larkmere.example',
  paperFormat: 'letter',
  tagFormat: '4x6',
  contentsOnTag: false,
  ...usualWaiting,
};

export const demoPeople = {
  owner: { name: 'Petra Lindqvold', initials: 'PL' },
  office: { name: 'Tobias Amankwell', initials: 'TA' },
  bench: { name: 'Joaquim Fellsby', initials: 'JF' },
} as const;

export const demoScales = [
  { name: 'Bench scale with hook', resolutionLbf: 0.1 },
  { name: 'Tiller wall scale', resolutionLbf: 0.2 },
] as const;
