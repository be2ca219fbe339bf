import { z } from './zod.ts';

/** Every paper the shop hands out or works from. */
export const paperKinds = [
  'work-order',
  'shipping-tag',
  'return-tag',
  'customs-note',
  'estimate',
  'receipt',
  'inscription-proof',
  'bow-label',
  'consent-form',
  'marking-template',
  'before-after',
  'care-card',
  'packing-list',
  'shelf-label',
  'lot-label',
  'mix-card',
] as const;
export const paperKind = z.enum(paperKinds);
export type PaperKind = (typeof paperKinds)[number];

export const paperFormats = ['letter', 'a4', '4x6', 'a6', 'long', 'label'] as const;
export const paperFormat = z.enum(paperFormats);
export type PaperFormat = (typeof paperFormats)[number];

export const paperCopies = ['bench', 'office', 'parcel', 'customer'] as const;
export const paperCopy = z.enum(paperCopies);
export type PaperCopy = (typeof paperCopies)[number];

/** Whom a paper is for: how they are laid out where they are chosen. */
export const paperGroups = ['customer', 'bench', 'parcel'] as const;
export type PaperGroup = (typeof paperGroups)[number];

export interface PaperChoices {
  label: string;
  /** Sizes it comes in. Among sheets and among tags the shop's own setting is the usual one. */
  formats: readonly [PaperFormat, ...PaperFormat[]];
  /** Copies it comes in; the first is the usual one. */
  copies: readonly [PaperCopy, ...PaperCopy[]];
  /** What it is made for. */
  about: 'order' | 'bow' | 'batch' | 'consumable' | 'lot';
}

const sheets = ['letter', 'a4'] as const;
const tags = ['4x6', 'a6'] as const;

/** What each paper is called and comes in. The one place where this is said. */
export const paperChoices: Record<PaperKind, PaperChoices> = {
  'work-order': {
    label: 'Work order',
    formats: sheets,
    copies: ['bench', 'office'],
    about: 'order',
  },
  'inscription-proof': {
    label: 'Inscription proof',
    formats: sheets,
    copies: ['customer'],
    about: 'order',
  },
  'bow-label': {
    label: 'Bow label and lettering guide',
    formats: ['letter', 'a4', 'label'],
    copies: ['bench'],
    about: 'order',
  },
  'marking-template': {
    label: 'Marking-out template',
    formats: ['letter', 'a4', 'long'],
    copies: ['bench'],
    about: 'order',
  },
  'before-after': {
    label: 'Before and after',
    formats: sheets,
    copies: ['customer'],
    about: 'order',
  },
  'care-card': {
    label: 'Care card',
    formats: sheets,
    copies: ['customer'],
    about: 'order',
  },
  'consent-form': {
    label: 'Consent form',
    formats: sheets,
    copies: ['customer'],
    about: 'order',
  },
  estimate: {
    label: 'Estimate',
    formats: sheets,
    copies: ['customer', 'office'],
    about: 'order',
  },
  receipt: {
    label: 'Receipt',
    formats: sheets,
    copies: ['customer', 'office'],
    about: 'order',
  },
  'packing-list': {
    label: 'Packing list',
    formats: sheets,
    copies: ['parcel', 'office'],
    about: 'order',
  },
  'shipping-tag': {
    label: 'Shipping tag',
    formats: tags,
    copies: ['parcel', 'office'],
    about: 'order',
  },
  'return-tag': {
    label: 'Return tag',
    formats: tags,
    copies: ['parcel'],
    about: 'order',
  },
  'customs-note': {
    label: 'Customs note',
    formats: sheets,
    copies: ['parcel', 'office'],
    about: 'order',
  },
  'shelf-label': {
    label: 'Shelf label',
    formats: ['label'],
    copies: ['bench'],
    about: 'consumable',
  },
  'lot-label': {
    label: 'Lot label',
    formats: ['label'],
    copies: ['bench'],
    about: 'lot',
  },
  'mix-card': {
    label: 'Mix card',
    formats: sheets,
    copies: ['bench'],
    about: 'batch',
  },
};

/** By the copy it usually goes out in: office copies come from any group. */
export function paperGroupOf(kind: PaperKind): PaperGroup {
  const [copy] = paperChoices[kind].copies;
  return copy === 'office' ? 'customer' : copy;
}
