import {
  type InscriptionLayout,
  inscriptionLayout,
} from '../../../../shared/contract/inscriptions.ts';
import { usualLetterHeightIn } from '../../../../shared/inscription.ts';
import type { z } from '../../../../shared/zod.ts';
import { fieldErrors } from '../../../parts/field-errors.ts';

/** The layout as it is typed; a height may be empty meanwhile. */
export type LayoutDraft = Omit<InscriptionLayout, 'letterHeightIn'> & {
  letterHeightIn: number | null;
};
export type WholeLayout = z.infer<typeof inscriptionLayout>;

export const emptyLayout: LayoutDraft = {
  position: '',
  makerMark: '',
  surface: 'sealed',
  manner: 'hand',
  ink: '',
  letterHeightIn: usualLetterHeightIn,
  oldMarking: '',
  note: '',
};

export function layoutErrors(draft: LayoutDraft): Record<string, string> {
  const { position, letterHeightIn } = draft;
  return {
    ...fieldErrors(inscriptionLayout, draft),
    ...(position.trim() === '' ? { position: 'Say where on the bow the lines stand.' } : {}),
    ...(letterHeightIn === null ? { letterHeightIn: 'Give the height of a capital.' } : {}),
  };
}

export function isWhole(draft: LayoutDraft): draft is WholeLayout {
  return Object.keys(layoutErrors(draft)).length === 0;
}

export const positionLimbs = ['Upper limb', 'Lower limb', 'Riser'] as const;
export const positionFaces = ['belly', 'back', 'side'] as const;

/** Choices as plain words, to be changed by hand afterwards. */
export function positionText(
  limb: string | null,
  face: string | null,
  fromGripIn: number | null,
): string {
  const away =
    fromGripIn === null || Number.isNaN(fromGripIn) ? '' : `${fromGripIn} in from the grip`;
  return [limb ?? '', face ?? '', away].filter((part) => part !== '').join(', ');
}

/** The choices that words begin with, so that another tap changes its part and keeps the rest. */
export function positionChoices(words: string) {
  const parts = words.split(', ');
  const away = parts.map((part) => /^([\d.]+) in from the grip$/.exec(part)?.[1]);
  const inches = away.find((part) => part !== undefined);
  return {
    limb: positionLimbs.find((each) => parts.includes(each)) ?? null,
    face: positionFaces.find((each) => parts.includes(each)) ?? null,
    fromGripIn: inches === undefined ? null : Number(inches),
  };
}

export const makerMarkChoices = [
  'stays as it is',
  'stays, under the new finish',
  'sanded off; kept in the photographs',
  'none on the bow',
] as const;
