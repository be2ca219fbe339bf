/** A number as a bow is marked: `45`, `44.8`, `28 1/2`. */
const number = String.raw`\d+(?:\.\d+)?(?: \d+\/\d+)?`;
/** A weight with its unit and perhaps its draw, or a bare number "@" a draw. */
const marking = new RegExp(
  `(${number}) ?(?:(?:#(?!\\d)|lbs?\\b\\.?|pounds?\\b) ?(?:(?:@|at) ?(${number}))?|@ ?(${number}))`,
  'gi',
);

export interface MeasuredWeight {
  /** Draw length, inches AMO. */
  drawIn: number;
  forceLbf: number;
}

/** Lines run on, and fraction signs spelt out, so that a marking over two lines is still one. */
function runOn(inscription: string): string {
  return inscription
    .replaceAll(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${sign.normalize('NFKC').replace('\u2044', '/')}`)
    .replaceAll(/\s+/g, ' ');
}

function poundsOrInches(text: string): number {
  const [whole = '0', fraction] = text.split(' ');
  const [over = '0', under = '1'] = fraction?.split('/') ?? [];
  return Number(whole) + Number(over) / Number(under);
}

/**
 * Why a weight in these lines may not be written on the bow, or null. Only the latest weighing
 * at that very AMO draw counts: a weight at another draw or reference is not a marking.
 * @param roundLbf step the shop rounds a marking to, pound-force; half of it is what rounding can do
 */
export function inscribedWeightTrouble(
  inscription: string,
  measured: readonly MeasuredWeight[],
  roundLbf: number,
): string | null {
  for (const [text, force = '', withUnit, bare] of runOn(inscription).matchAll(marking)) {
    const draw = withUnit ?? bare;
    const quoted = `"${text.trim().slice(0, 60)}" is to be written`;
    if (draw === undefined) return `${quoted} without its draw length: a weight needs both.`;
    const latest = measured.filter((weight) => weight.drawIn === poundsOrInches(draw)).at(-1);
    if (latest === undefined) {
      return `${quoted}, but nothing was weighed at ${draw.slice(0, 20)}" AMO as the bow is now.`;
    }
    // Written so that a number that is none (1/0) is refused as well.
    if (!(Math.abs(latest.forceLbf - poundsOrInches(force)) <= roundLbf / 2 + 1e-9)) {
      return `${quoted}, but the last weighing at ${draw}" AMO was ${latest.forceLbf.toFixed(1)} lb.`;
    }
  }
  return null;
}
