import type { BowFields } from '../../shared/contract/bows.ts';
import type { CustomerFields } from '../../shared/contract/customers.ts';
import type { LimbSetFields } from '../../shared/contract/limb-sets.ts';
import type { OrderFields } from '../../shared/contract/orders.ts';

/** Invented people and bows, in no relation to anybody. */
export const shopFields = {
  name: 'Fernhill Bow Works',
  address: {
    street: '4 Mill Lane',
    city: 'Ashdale',
    region: 'VT',
    postalCode: '05000',
    country: 'USA',
  },
  phone: '555 0100',
  email: 'bench@fernhill.example',
  paperFormat: 'letter' as const,
  tagFormat: '4x6' as const,
  contentsOnTag: false,
  reminderDays: [3, 10, 21],
  storageFeeDays: 30,
  abandonedDays: 90,
};

export const customerFields: CustomerFields = {
  name: 'Nora Hale',
  email: 'nora@hale.example',
  phone: '555 0142',
  preferredContact: 'email',
  address: {
    street: '12 Orchard Road',
    city: 'Millbrook',
    region: 'OH',
    postalCode: '44000',
    country: 'USA',
  },
  shootingStyle: 'three-under',
  ownDrawIn: 27.5,
  notes: '',
};

export const bowFields: BowFields = {
  kind: 'longbow',
  construction: 'glass-laminated',
  takeDown: 'one-piece',
  hand: 'right',
  maker: 'Oldfield',
  model: 'Heron',
  serial: 'H-118',
  amoLengthIn: 66,
  tipToTipIn: null,
  markedWeightLbf: 52,
  markedDrawIn: 28,
  markedDrawReference: 'amo',
  maxSafeDrawIn: 30,
  profile: 'reflex-deflex',
  recurveDepthIn: null,
  throatToFadeIn: null,
  limbPadDeg: null,
  limbs: { upper: { fadeIn: null, limbIn: null }, lower: { fadeIn: null, limbIn: null } },
  faces: {
    back: { facing: 'E-glass', glassMadeIn: 0.05, glassNowIn: 0.048, glassHow: 'loupe' },
    belly: { facing: 'E-glass', glassMadeIn: 0.05, glassNowIn: 0.05, glassHow: 'loupe' },
  },
  coreWood: 'rock elm',
  moisturePct: null,
  edgeRadiusIn: null,
  lowStretchTips: 'unknown',
  braceLowIn: null,
  braceHighIn: null,
  listedSpecies: 'unknown',
  notes: '',
};

export const orderFields: OrderFields = {
  services: ['reduce-weight', 're-mark'],
  targetWeightLbf: 45,
  targetDrawIn: 28,
  tillerTarget: '0 to +1/8',
  promisedOn: '2026-05-01',
  estimateCents: 24_000,
  shipTo: '',
  privateNotes: '',
  customerNotes: '',
};

/** Limbs of a take-down, marked on a riser of their own. */
export const limbSetFields: LimbSetFields = {
  name: 'long limbs',
  upperSerial: 'U-7',
  lowerSerial: 'L-7',
  amoLengthIn: 62,
  markedWeightLbf: 48,
  markedDrawIn: 28,
  markedDrawReference: 'amo',
  riserName: 'Heron 17',
  riserLengthIn: 17,
  riserPadDeg: 14,
  notes: '',
};
