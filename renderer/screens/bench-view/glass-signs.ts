import { type GlassSign, glassSigns } from '../../../shared/bench.ts';

export type GlassAnswers = Record<GlassSign, boolean | null>;

export const glassQuestions: Record<GlassSign, string> = {
  showThrough: 'Does wood or colour show through a face?',
  strands: 'Do glass strands lift or fuzz at an edge?',
  runOut: 'Do strands run out over an edge that was cut?',
  exposedCore: 'Is the core or a glue line bare anywhere?',
};

export const nothingAnswered: GlassAnswers = {
  showThrough: null,
  strands: null,
  runOut: null,
  exposedCore: null,
};

/** The next sign nobody looked for yet, or null. */
export function nextSign(answers: GlassAnswers): GlassSign | null {
  return glassSigns.find((sign) => answers[sign] === null) ?? null;
}

/** What was seen, as it is read back. */
export function glassSaid(answers: GlassAnswers): string {
  const seen = glassSigns.filter((sign) => answers[sign] === true);
  const names: Record<GlassSign, string> = {
    showThrough: 'show-through',
    strands: 'lifted strands',
    runOut: 'strands running out',
    exposedCore: 'bare core or glue line',
  };
  if (seen.length === 0) return 'Glass sound: none of the four signs.';
  return `Glass not sound: ${seen.map((sign) => names[sign]).join(', ')}.`;
}
