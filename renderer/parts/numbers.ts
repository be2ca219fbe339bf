const number = /^(-?)(\d+(?:[.,]\d+)?)?(?:[\s-]*(\d+)\/(\d+))?$/;

/** Reads `66`, `28.25`, `28,25`, `28 1/4` or `1/8`. Null when empty, NaN when it is no number. */
export function numberFrom(typed: string): number | null {
  const plain = typed.trim();
  if (plain === '') return null;
  const match = number.exec(plain);
  if (match === null) return Number.NaN;
  const [, sign, whole = '', above, below] = match;
  if (whole === '' && above === undefined) return Number.NaN;
  if (above !== undefined && (Number(below) === 0 || /[.,]/.test(whole))) return Number.NaN;
  const fraction = above === undefined ? 0 : Number(above) / Number(below);
  const size = Number(whole === '' ? 0 : whole.replace(',', '.')) + fraction;
  return sign === '-' ? -size : size;
}
