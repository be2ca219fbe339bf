/** Grain from which a stroke takes no more, micrometres. */
const criticalMicrometres = 100;

/**
 * Strokes of one grit counted in strokes of a coarse grain that take as much off: wear rises with
 * the grain up to a critical size, and from there stays.
 *
 * Source, from memory, as is the critical size of about 100 micrometres: H. Sin, N. Saka and
 * N. P. Suh, "Abrasive wear mechanisms and the grit size effect", Wear 55 (1979).
 * @param micrometres median grain size
 */
export const strokeWork = (strokes: number, micrometres: number): number =>
  strokes * Math.min(1, micrometres / criticalMicrometres);
