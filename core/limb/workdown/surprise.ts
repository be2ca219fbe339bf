/** What to look at after a reading that does not fit, in this order (common practice). */
export const surpriseOrder = [
  'brace',
  'string',
  'rig zero',
  'temperature',
  'draw reference',
  'scale',
] as const;

export type SurpriseCause = (typeof surpriseOrder)[number];

const questions: Record<SurpriseCause, string> = {
  brace: 'Is the brace height what it was?',
  string: 'Is it the same string, seated in both grooves?',
  'rig zero': 'Does the empty rig show zero?',
  temperature: 'Has the bow been at shop temperature for a day?',
  'draw reference': 'Was the draw measured from the throat plus 1 3/4 in?',
  scale: 'Does the scale show the check weight right?',
};

export interface SurpriseQuestion {
  about: SurpriseCause;
  question: string;
}

/** A reading farther than this from its forecast is no chance, standard errors. */
export const surpriseFromSe = 3;

/**
 * What must be answered before anything more is cut, in order; null where the reading fits.
 * @param innovation reading minus forecast, standard errors; one that is no number fits nothing
 */
export function surpriseOf(innovation: number): readonly SurpriseQuestion[] | null {
  if (Math.abs(innovation) <= surpriseFromSe) return null;
  return surpriseOrder.map((about) => ({ about, question: questions[about] }));
}
