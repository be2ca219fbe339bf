/**
 * Bar and space widths of the Code 128 symbols, values 0 to 106, in modules, bar first.
 * ISO/IEC 15417, table 1; typed in from memory and proved below by its own rules
 * (11 modules, an even number of them dark, no two alike).
 */
export const patterns = `
212222 222122 222221 121223 121322 131222 122213 122312 132212 221213
221312 231212 112232 122132 122231 113222 123122 123221 223211 221132
221231 213212 223112 312131 311222 321122 321221 312212 322112 322211
212123 212321 232121 111323 131123 131321 112313 132113 132311 211313
231113 231311 112133 112331 132131 113123 113321 133121 313121 211331
231131 213113 213311 213131 311123 311321 331121 312113 312311 332111
314111 221411 431111 111224 111422 121124 121421 141122 141221 112214
112412 122114 122411 142112 142211 241211 221114 413111 241112 134111
111242 121142 121241 114212 124112 124211 411212 421112 421211 212141
214121 412121 111143 111341 131141 114113 114311 411113 411311 113141
114131 311141 411131 211412 211214 211232 2331112
`
  .trim()
  .split(/\s+/);

export const stopValue = 106;

/** Symbol values behind drawn widths, start first, stop last. */
export function valuesOf(widths: readonly number[]): number[] {
  const body = widths.slice(0, -7);
  const symbols = Array.from({ length: body.length / 6 }, (_, i) =>
    body.slice(i * 6, i * 6 + 6).join(''),
  );
  return [...symbols, widths.slice(-7).join('')].map((symbol) => {
    const value = patterns.indexOf(symbol);
    if (value === -1) throw new Error(`no Code 128 symbol has the widths ${symbol}`);
    return value;
  });
}

/** ISO/IEC 15417 annex A: (start + sum of place x value) mod 103, the first symbol after the start having place 1. */
export function checkSum(values: readonly number[]): number {
  const [start = 0, ...rest] = values;
  return rest.reduce((sum, value, i) => sum + (i + 1) * value, start);
}
