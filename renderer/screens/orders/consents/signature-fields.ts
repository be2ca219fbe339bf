import {
  intentWords,
  type Signature,
  type Stroke,
  signature,
  signatureBox,
} from '../../../../shared/signatures.ts';

/** What stands in the signing field. */
export interface SignedBy {
  manner: 'drawn' | 'typed';
  strokes: Stroke[];
  name: string;
  /** The box with the words that say what signing means. */
  agrees: boolean;
}

export const unsigned: SignedBy = { manner: 'drawn', strokes: [], name: '', agrees: false };

/** A thousandth of an inch is finer than any pen. */
const fine = (inches: number) => Math.round(inches * 1000) / 1000;
const within = (value: number, most: number) => Math.min(Math.max(value, 0), most);

/** Place of the pointer in the box, inches from its upper left corner. */
export function pointIn(
  box: { getBoundingClientRect(): Pick<DOMRect, 'left' | 'top' | 'width' | 'height'> },
  at: { clientX: number; clientY: number },
): [number, number] {
  const { left, top, width, height } = box.getBoundingClientRect();
  const { widthIn, heightIn } = signatureBox;
  return [
    fine(within(((at.clientX - left) / width) * widthIn, widthIn)),
    fine(within(((at.clientY - top) / height) * heightIn, heightIn)),
  ];
}

/** The strokes with the one being drawn in place of its shorter self. */
export function strokesWith(strokes: readonly Stroke[], drawing: Stroke): Stroke[] {
  return [...strokes.slice(0, -1), drawing];
}

/** Whether anything was begun: an empty field is no signature, and no trouble either. */
export function isBegun({ manner, strokes, name, agrees }: SignedBy): boolean {
  return agrees || (manner === 'drawn' ? strokes.length > 0 : name.trim() !== '');
}

/** The signature as it is kept, or what is missing of it. */
export function signatureOf(
  given: SignedBy,
  answeredBy: string,
): { is: Signature } | { wrong: string } {
  if (!given.agrees) return { wrong: `Tick "${intentWords}" beside the signature.` };
  const { manner, strokes, name } = given;
  if (manner === 'typed' && name.trim().toLowerCase() !== answeredBy.trim().toLowerCase()) {
    return { wrong: 'The name typed as signature must be the name of who answers.' };
  }
  const made =
    manner === 'drawn'
      ? { manner, intent: intentWords, strokes }
      : { manner, intent: intentWords, name };
  const read = signature.safeParse(made);
  return read.success
    ? { is: read.data }
    : { wrong: read.error.issues[0]?.message ?? 'Sign here.' };
}
