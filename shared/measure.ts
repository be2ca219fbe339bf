/** How the trade writes weights and lengths. Text only; nothing here computes a bow. */

const glyphs: Record<string, string> = {
  '1/4': '¼',
  '1/2': '½',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** A difference of measured values without binary dust: 32.2 - 31.7 is half a pound, not a hair more. */
export function difference(a: number, b: number): number {
  return Number((a - b).toFixed(6));
}

/** A number without trailing zeros, at most `digits` decimals. */
export function decimal(value: number, digits = 1): string {
  return String(Number(value.toFixed(digits)));
}

/** Inches to the nearest sixteenth, or other part, as a rule is read: `7 1/4`, `1/16`, `28`. */
export function inchFraction(inches: number, parts = 16): string {
  const total = Math.round(Math.abs(inches) * parts);
  const sign = inches < 0 && total > 0 ? '-' : '';
  const whole = Math.floor(total / parts);
  const rest = total % parts;
  if (rest === 0) return `${sign}${whole}`;
  const divisor = gcd(rest, parts);
  const fraction = `${rest / divisor}/${parts / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}

/** The same with a set fraction glyph where the paper fonts have one. */
export function inchGlyph(inches: number): string {
  return inchFraction(inches).replace(/ ?(\d+\/\d+)$/, (_, f: string) => glyphs[f] ?? ` ${f}`);
}

/** Draw weight as written on a bow: `45# @ 28"`. Always with the draw length it was measured at. */
export function weightAtDraw(
  forceLbf: number,
  drawIn: number,
  // Four decimals hold a sixteenth exactly: a draw a hair off 28 in must not read as 28 in.
  drawText = decimal(drawIn, 4),
): string {
  return `${decimal(forceLbf)}# @ ${drawText}"`;
}
