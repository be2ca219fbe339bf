import type { ShippingTagData, WorkOrderData } from '../../../core/papers/data.ts';

/** Invented shop and customer. */
export const workOrderSample: WorkOrderData = {
  format: 'letter',
  copy: 'office',
  printedAt: '2026-03-02T09:00:00.000Z',
  shop: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000'],
    phone: '555 0100',
    email: 'bench@fernhill.example',
  },
  order: {
    number: '26-0147',
    createdOn: '2026-02-20',
    promisedOn: '2026-05-01',
    stage: 'Weight work',
    services: ['Reduce weight', 'Re-mark'],
    target: '45# @ 28"',
    tiller: 'three-under, 0 to +1/8',
    inscription: 'AMO 66"\n45# @ 28"',
    notes: 'Wants the old grip kept.',
    hold: null,
  },
  customer: {
    name: 'Nora Hale',
    lines: ['12 Orchard Road', 'Millbrook, OH 44000'],
    phone: '555 0142',
    email: 'nora@hale.example',
  },
  bow: {
    line: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
    facts: [
      ['Serial', 'H-118'],
      ['Built', 'glass-laminated, facing E-glass, right hand'],
      ['Maximum safe draw', '30"'],
    ],
    notes: '',
  },
  stopFindings: [],
  strip: {
    arrivalLbf: 52.3,
    nowLbf: 47.8,
    targetLbf: 45,
    stopBandLbf: [46.2, 47],
    forecastLbf: [45.8, 46.4, 47],
  },
  stripDraw: '28" AMO',
  weighings: [
    {
      on: '2026-03-01',
      phase: 'arrival',
      weights: '52.3# @ 28"',
      brace: '7 1/4"',
      scale: 'bench scale',
    },
    {
      on: '2026-03-02',
      phase: 'work',
      weights: '44.1# @ 26", 47.8# @ 28"',
      brace: '7 1/4"',
      scale: 'bench scale',
    },
  ],
  consents: [
    { label: 'Price and scope', state: 'granted' },
    { label: 'Marking approval', state: 'waiting for an answer' },
  ],
  belongings: 'string, bow sock',
  cautions: ['Use a stringer. Eye protection; stand clear of the limb path when weighing.'],
  stages: [
    { label: 'Requested', by: 'Otto Reed', on: '2026-02-20' },
    { label: 'Arrived', by: 'Otto Reed', on: '2026-03-01' },
    { label: 'Weight work', by: '', on: '' },
  ],
};

export const workOrderLong: WorkOrderData = {
  ...workOrderSample,
  format: 'a4',
  stopFindings: ['Upper limb, 9" from the fade: delamination along the belly glass, about 2" long'],
  customer: {
    name: 'Maximiliane-Theodora van der Hoogenboom-Sørensen '.repeat(4).trim(),
    lines: Array.from(
      { length: 5 },
      (_, i) => `Line ${i + 1} of an address that is longer than anybody would like it to be`,
    ),
    phone: '555 0142',
    email: `${'long'.repeat(20)}@example.example`,
  },
  order: {
    ...workOrderSample.order,
    services: Array.from({ length: 7 }, () => 'Grip, leather, rest, strike plate'),
    inscription: Array.from({ length: 8 }, (_, i) => `Line ${i + 1} to be written on the bow`).join(
      '\n',
    ),
    notes: 'The customer wrote a long letter about this bow and wants all of it kept. '.repeat(30),
    hold: 'waiting for the customer to decide about the overlay on the lower tip',
  },
  weighings: Array.from({ length: 40 }, (_, i) => ({
    on: '2026-03-02',
    phase: 'after sanding',
    weights: `${50 - i / 10}# @ 28", ${40 - i / 10}# @ 26" to the back`,
    brace: '7 1/4"',
    scale: 'bench scale by the window',
  })),
  consents: Array.from({ length: 12 }, () => ({
    label: 'Alteration acknowledgement',
    state: 'no longer fits: what it referred to has changed',
  })),
};

export const tagSample: ShippingTagData = {
  format: '4x6',
  copy: 'parcel',
  printedAt: '2026-03-02T09:00:00.000Z',
  number: '26-0147',
  from: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000', 'USA', '555 0100'],
  },
  to: { name: 'Nora Hale', lines: ['12 Orchard Road', 'Millbrook, OH 44000', 'USA'] },
  contents: null,
  carrier: 'Postal ground 9400 1000 0000',
  unsafe: false,
  declaredValue: '$480.00',
  box: '66 x 5 x 5 in, 5 lb',
};

export const tagLong: ShippingTagData = {
  ...tagSample,
  format: 'a6',
  copy: 'office',
  unsafe: true,
  contents: 'Archery bow, unstrung',
  to: {
    name: 'Maximiliane-Theodora van der Hoogenboom-Sørensen and family',
    lines: Array.from(
      { length: 6 },
      (_, i) => `Line ${i + 1} of an address that is longer than anybody would like it to be`,
    ),
  },
};
