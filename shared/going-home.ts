import { type GoingHome, goingHomeLabels } from './stages.ts';

/** `going home: the shop refused the work`. */
export function goingHomeText(kind: GoingHome): string {
  const why = goingHomeLabels[kind];
  return `going home: ${why.charAt(0).toLowerCase()}${why.slice(1)}`;
}

/** The same at the head of a line. */
export function goingHomeLine(kind: GoingHome): string {
  const text = goingHomeText(kind);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
