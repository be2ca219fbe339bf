import type { z } from 'zod';
import type { cameAs, construction, facing, takeDown } from './bows.ts';
import type { Service } from './stages.ts';

/** What decides which checks a bow gets before it is packed. */
export interface FinalCheckSubject {
  construction: z.infer<typeof construction>;
  takeDown: z.infer<typeof takeDown>;
  backFacing: z.infer<typeof facing>;
  bellyFacing: z.infer<typeof facing>;
  services: readonly Service[];
  cameAs: z.infer<typeof cameAs>;
  /** The route of the order goes through Finish. */
  finished: boolean;
  /** A bite was taken and not struck out. */
  bitten: boolean;
}

export const finalCheckItems = [
  'check-flexed',
  'check-glass',
  'check-belly',
  'check-back',
  'check-nocks',
  'check-joint',
  'check-sleeve',
  'check-string',
  'check-alignment',
  'check-brace-and-tiller',
  'check-weighed',
  'check-straightness',
  'check-edges',
  'check-finish',
  'check-markings',
  'check-grip',
] as const;
export type FinalCheckItem = (typeof finalCheckItems)[number];

export interface FinalCheck {
  item: FinalCheckItem;
  label: string;
  /** What is looked at, and how. */
  hint: string;
  /** Said in place of the hint where the limbs came without their riser. */
  limbsOnlyHint?: string;
  /** Never waived: a bow that fails it may hurt whoever draws it. */
  safety: boolean;
  applies(of: FinalCheckSubject): boolean;
}

const fibre = ['E-glass', 'clear over veneer', 'carbon'];
const timber = ['wood', 'bamboo'];
const always = () => true;
const has = (of: FinalCheckSubject, ...services: Service[]) =>
  services.some((service) => of.services.includes(service));

/** A face nobody has identified gets the checks of every face it could be. */
const mayBeGlass = (of: FinalCheckSubject, face: FinalCheckSubject['backFacing']) =>
  fibre.includes(face) || (face === 'unknown' && of.construction !== 'all-wood');
const mayBeWood = (of: FinalCheckSubject, face: FinalCheckSubject['backFacing']) =>
  of.construction === 'all-wood' ||
  timber.includes(face) ||
  (face === 'unknown' && of.construction === 'other');

/**
 * The last look before packing, by what the bow is made of and what was done to it. Common
 * practice of the trade; no published standard lists it.
 */
export const finalChecks: readonly FinalCheck[] = [
  {
    item: 'check-flexed',
    label: 'Flexed twenty times and looked at again',
    hint: 'Flex it twenty times, no further than the draw it was weighed at. Then look again at both fades and both tips.',
    limbsOnlyHint:
      'On the riser they were weighed on: flex twenty times, no further than the draw they were weighed at. Then look again at both fades and both tips.',
    safety: true,
    applies: always,
  },
  {
    item: 'check-glass',
    label: 'Glass sound on every glass face',
    hint: 'Nothing raised or crazed, no lifted strands, no core showing through; edges too.',
    safety: true,
    applies: (of) => mayBeGlass(of, of.backFacing) || mayBeGlass(of, of.bellyFacing),
  },
  {
    item: 'check-belly',
    label: 'Wood belly free of chrysals and frets',
    hint: 'Fine lines across the belly under raking light, first at knots, hinges and mid-limb.',
    safety: true,
    applies: (of) => mayBeWood(of, of.bellyFacing),
  },
  {
    item: 'check-back',
    label: 'Wood back free of lifted splinters',
    hint: 'No lifted splinter and no grain running out at an edge, above all at the bend.',
    safety: true,
    applies: (of) => mayBeWood(of, of.backFacing),
  },
  {
    item: 'check-nocks',
    label: 'Nocks, tip wedges and overlays sound',
    hint: 'No gap at a tip wedge or overlay; string grooves smooth, nothing that cuts a string.',
    safety: true,
    applies: always,
  },
  {
    item: 'check-joint',
    label: 'Take-down joint sound',
    hint: 'Limb bolts and pins right, bushings firm, no crack at a bolt hole, limbs seat flat in line.',
    limbsOnlyHint:
      'On the riser they were weighed on: bolts and pins right, no crack at a bolt hole, limbs seat flat in line.',
    safety: true,
    applies: (of) => of.takeDown === 'bolted three-piece',
  },
  {
    item: 'check-sleeve',
    label: 'Sleeve fits without play',
    hint: 'Goes home by hand, no play or click when flexed, no crack at the sleeve ends.',
    safety: true,
    applies: (of) => of.takeDown === 'sleeve',
  },
  {
    item: 'check-string',
    label: 'New string right for the bow',
    hint: 'Right length and strand count, loops seated, serving tight; low-stretch only on tips made for it.',
    safety: true,
    applies: (of) => has(of, 'new-string'),
  },
  {
    item: 'check-alignment',
    label: 'Limbs in line, string tracks the middle',
    hint: 'Sighted from both ends when braced: no twist, string down the middle of both limbs.',
    safety: false,
    applies: always,
  },
  {
    item: 'check-brace-and-tiller',
    label: 'Brace height and tiller read',
    hint: 'Write both down: brace height, and upper minus lower at the fades.',
    safety: false,
    applies: always,
  },
  {
    item: 'check-weighed',
    label: 'Weighed at the marked draw',
    hint: 'A final weighing at the draw length that is written on the bow.',
    limbsOnlyHint:
      'A final weighing on the same riser, at the draw length that is written on the limbs.',
    safety: false,
    applies: (of) => of.bitten || has(of, 'reduce-weight', 'strip-refinish'),
  },
  {
    item: 'check-straightness',
    label: 'Straight when unstrung',
    hint: 'Sighted from both ends unstrung; string follow no more than it came with, or noted.',
    safety: false,
    applies: always,
  },
  {
    item: 'check-edges',
    label: 'Edges re-rounded',
    hint: 'Every edge that was cut or sanded is round again and smooth to the hand.',
    safety: false,
    applies: (of) => of.bitten || has(of, 'reduce-weight', 'strip-refinish'),
  },
  {
    item: 'check-finish',
    label: 'Finish even in raking light',
    hint: 'No runs, dust, orange peel or bare spots; both faces, both edges, riser.',
    safety: false,
    applies: (of) => of.finished,
  },
  {
    item: 'check-markings',
    label: 'Markings legible and word for word',
    hint: 'Read aloud against the approved lines, letter by letter, weight and draw length too.',
    safety: false,
    applies: (of) => has(of, 're-mark'),
  },
  {
    item: 'check-grip',
    label: 'Grip, leather, rest and strike plate in place',
    hint: 'Nothing loose or lifting; rest and strike plate on the right side for the hand.',
    safety: false,
    applies: (of) => has(of, 'grip-rest'),
  },
];

/** One row of the checklist as it is read out. */
export interface ChecklistRow {
  item: FinalCheckItem;
  label: string;
  hint: string;
  safety: boolean;
}

/** The checks that this bow gets, in the order they are made. */
export function checklistFor(of: FinalCheckSubject): ChecklistRow[] {
  return finalChecks
    .filter((check) => check.applies(of))
    .map(({ item, label, hint, limbsOnlyHint, safety }) => ({
      item,
      label,
      hint: of.cameAs === 'limbs-only' ? (limbsOnlyHint ?? hint) : hint,
      safety,
    }));
}
