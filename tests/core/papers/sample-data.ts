import type { ShippingTagData, WorkOrderData } from '../../../core/papers/data.ts';
import { planLong, planSample } from './plan-samples.ts';
import { estimateSample, receiptLong } from './price-paper-samples.ts';

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
  plan: planSample,
  lettering: [
    ['Lines', 'AMO 66"\n45# @ 28"'],
    ['Where', 'upper limb, belly, 3 in above the grip'],
    ['How', 'lettered by hand'],
  ],
  finish: [
    ['Finish', 'two-part satin, 3 coats'],
    ['Last coat', ''],
    ['Safe to wrap', ''],
    ['Fully cured', ''],
  ],
  price: {
    lines: estimateSample.lines,
    sums: estimateSample.sums,
    payments: [],
    open: estimateSample.open,
  },
  stages: [
    { label: 'Requested', by: 'Otto Reed', on: '2026-02-20' },
    { label: 'Arrived', by: 'Otto Reed', on: '2026-03-01' },
    { label: 'Weight work', by: '', on: '' },
  ],
};

/** Nothing known yet but the number. */
export const workOrderEmpty: WorkOrderData = {
  ...workOrderSample,
  format: 'a4',
  copy: 'bench',
  order: {
    ...workOrderSample.order,
    promisedOn: null,
    stage: 'Requested',
    services: ['Re-mark'],
    target: null,
    tiller: '',
    notes: '',
  },
  customer: null,
  bow: null,
  strip: {
    arrivalLbf: null,
    nowLbf: null,
    targetLbf: null,
    stopBandLbf: null,
    forecastLbf: null,
  },
  weighings: [],
  consents: [],
  belongings: '',
  plan: null,
  lettering: [],
  finish: [],
  price: null,
  stages: [{ label: 'Requested', by: '', on: '' }],
};

/** 200 letters with hardly a place to break. */
const longName = 'Maximiliane-Theodora-Wilhelmina van der Hoogenboom-Sørensen '
  .repeat(4)
  .slice(0, 200);

/** As long as the shop's forms allow, and longer. */
export const workOrderLong: WorkOrderData = {
  ...workOrderSample,
  format: 'a4',
  stopFindings: Array.from(
    { length: 3 },
    (_, i) =>
      `Upper limb, ${9 + i}" from the fade: delamination along the belly glass, about 2" long, opens when the limb is flexed by hand`,
  ),
  shop: { ...workOrderSample.shop, name: longName },
  customer: {
    name: longName,
    lines: Array.from(
      { length: 5 },
      (_, i) => `Line ${i + 1} of an address that is longer than anybody would like it to be`,
    ),
    phone: '555 0142',
    email: `${'long'.repeat(45)}@hale.example`,
  },
  bow: {
    line: `take-down recurve 62", ${longName}`,
    facts: [
      ['Marked', '52# @ 28", reference unknown'],
      ['Serial', 'X'.repeat(200)],
      ['Built', 'glass-laminated, facing clear over veneer, right hand'],
      ['Maximum safe draw', 'not known: never past the marked draw'],
    ],
    notes: 'Older overlay on the lower tip, reglued once. '.repeat(40),
  },
  order: {
    ...workOrderSample.order,
    services: Array.from(
      { length: 40 },
      (_, i) => `Grip, leather, rest, strike plate no. ${i + 1}`,
    ),
    notes: Array.from(
      { length: 40 },
      (_, i) => `Note ${i + 1}: the customer wrote a long letter about this bow and wants it kept.`,
    ).join('\n'),
    hold: 'waiting for the customer to decide about the overlay on the lower tip '.repeat(3),
  },
  weighings: Array.from({ length: 40 }, (_, i) => ({
    on: '2026-03-02',
    phase: 'after sanding',
    weights: `${50 - i / 10}# @ 28", ${40 - i / 10}# @ 26" to the back, ${36 - i / 10}# @ 24" to the back`,
    brace: '7 1/4"',
    scale: i % 7 === 0 ? 'bench scale by the window, checked every Monday' : 'bench scale',
  })),
  consents: Array.from({ length: 12 }, () => ({
    label: 'Alteration acknowledgement',
    state: 'no longer fits: what it referred to has changed',
    on: '2026-02-28',
  })),
  belongings: 'string, bow sock, stringer, hard case with a broken latch, '.repeat(6),
  cautions: Array.from(
    { length: 6 },
    () =>
      'Some two-part finishes contain isocyanates: supplied air as their sheet says, not a dust mask. Solvent and oil rags into a closed metal can, emptied daily.',
  ),
  plan: planLong,
  lettering: [
    [
      'Lines',
      Array.from({ length: 8 }, (_, i) => `Line ${i + 1} to be written on the bow`).join('\n'),
    ],
    [
      'Where',
      'upper limb, belly, between the fade and the overlay, reading towards the tip '.repeat(3),
    ],
  ],
  finish: [
    ['Finish', 'two-part satin over the old sealer, thinned for the first two coats '.repeat(4)],
  ],
  price: {
    lines: receiptLong.lines.slice(0, 12),
    sums: receiptLong.sums,
    payments: receiptLong.payments.slice(0, 4),
    open: receiptLong.open,
  },
  stages: Array.from({ length: 20 }, (_, i) => ({
    label: `Stage ${i + 1} of a long route`,
    by: i < 6 ? longName : '',
    on: i < 6 ? '2026-03-01' : '',
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
  carrier: 'Postal ground, tracking 9400 1000 0000',
  declaredValue: '$480.00',
  box: '66 x 5 x 5 in, 5 lb',
};

export const tagLong: ShippingTagData = {
  ...tagSample,
  format: 'a6',
  copy: 'office',
  contents: 'Archery bow, unstrung',
  carrier: 'Private carrier A, ground with signature, tracking 1000 2000 3000 4000 5000, insured',
  from: { name: longName.slice(0, 120), lines: tagSample.from.lines },
  to: {
    name: longName.slice(0, 120),
    lines: Array.from(
      { length: 5 },
      (_, i) => `Line ${i + 1} of an address that is longer than one would like`,
    ),
  },
};
