import { z } from './zod.ts';

/** Every paper the shop hands out or works from. */
export const paperKinds = ['work-order', 'shipping-tag'] as const;
export const paperKind = z.enum(paperKinds);
export type PaperKind = (typeof paperKinds)[number];

export const paperFormats = ['letter', 'a4', '4x6', 'a6', 'long', 'label'] as const;
export const paperFormat = z.enum(paperFormats);
export type PaperFormat = (typeof paperFormats)[number];

export const paperCopies = ['bench', 'office', 'parcel', 'customer'] as const;
export const paperCopy = z.enum(paperCopies);
export type PaperCopy = (typeof paperCopies)[number];

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
  'shipping-tag': {
    label: 'Shipping tag',
    formats: tags,
    copies: ['parcel', 'office'],
    about: 'order',
  },
};
