/** Upper minus lower, inches; both ends the same where one figure is meant. */
export interface TillerRange {
  fromIn: number;
  toIn: number;
}

const number = String.raw`(?:\d+\s+\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+)`;
const figure = new RegExp(String.raw`([+\-−–]\s*)?(${number})\s*(?:"|in\b|inch(?:es)?\b)?`, 'gu');
const even = /\b(?:even|equal|zero|level)\b/iu;
const negative = /\b(?:negative|lower weaker)\b/iu;
/** More is no tiller but another figure in the text. */
const largestIn = 1;

function inchesOf(text: string): number {
  return text
    .trim()
    .split(/\s+/u)
    .reduce((sum, part) => {
      const [top = '0', bottom] = part.split('/');
      return sum + Number(top) / (bottom === undefined ? 1 : Number(bottom));
    }, 0);
}

/**
 * The tiller that a shop's own words ask for: `0 to +1/8`, `1/8" positive`, `even`, `-1/16`.
 * A dash between two figures is "to".
 * @returns null where the words hold no figure, more than two, or one that can be no tiller
 */
export function tillerRange(text: string): TillerRange | null {
  const words = text.replaceAll(/(\d\s*"?)\s*[-−–]\s*(?=\d)/gu, '$1 to ');
  const values = [...words.matchAll(figure)].map(([, sign = '', digits = '']) => {
    const value = inchesOf(digits);
    return /[-−–]/u.test(sign) || (negative.test(words) && sign === '') ? -value : value;
  });
  if (values.length === 0) return even.test(words) ? { fromIn: 0, toIn: 0 } : null;
  if (values.length > 2) return null;
  const [fromIn, toIn] = [Math.min(...values), Math.max(...values)];
  const sane = Number.isFinite(fromIn) && fromIn >= -largestIn && toIn <= largestIn;
  return sane ? { fromIn: fromIn + 0, toIn: toIn + 0 } : null;
}
