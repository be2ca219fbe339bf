/** GPa along the grain at 12 % moisture. */
const published: readonly { names: readonly string[]; gpa: number }[] = [
  { names: ['white ash', 'ash'], gpa: 12 },
  { names: ['rock elm'], gpa: 10.6 },
  { names: ['red elm', 'slippery elm', 'elm'], gpa: 10.3 },
  { names: ['shagbark hickory', 'hickory'], gpa: 14.9 },
  { names: ['black locust', 'locust'], gpa: 14.1 },
  { names: ['sugar maple', 'hard maple', 'maple'], gpa: 12.6 },
  { names: ['red maple', 'soft maple'], gpa: 11.3 },
  { names: ['black walnut', 'walnut'], gpa: 11.6 },
  { names: ['white oak'], gpa: 12.3 },
  { names: ['bamboo'], gpa: 11 },
];

/** Bamboo laminations, and any core nobody knows: 9 to 13 GPa, common practice. */
export const unknownCoreGpa = 11;
/** Unidirectional E-glass in epoxy: S. W. Tsai, H. T. Hahn, "Introduction to Composite Materials", 1980. */
export const glassGpa = 38.6;

/**
 * Modulus of a core by the name of its wood, GPa, or null where none is published under it. The
 * longest name found in the words counts: "rock elm under maple" is rock elm.
 *
 * Source: Forest Products Laboratory, "Wood Handbook", FPL-GTR-282, table of clear wood at 12 %
 * moisture; bamboo laminations are common practice. Guesses largely cancel: only ratios count.
 */
export function coreGpaOf(coreWood: string): number | null {
  const words = coreWood.toLowerCase();
  const found = published
    .flatMap(({ names, gpa }) => names.map((name) => ({ name, gpa })))
    .filter(({ name }) => new RegExp(`\\b${name}\\b`, 'u').test(words))
    .toSorted((a, b) => b.name.length - a.name.length);
  return found[0]?.gpa ?? null;
}
