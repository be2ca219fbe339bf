import { bodyStyle, type Flow } from './flow.ts';
import { lineHeight, type TextStyle, wrap } from './lines.ts';
import { triangle } from './marks.ts';
import { artifact } from './sheet.ts';

/** Text beside a mark starts here, points. */
export const markIndent = 16;

/** One sentence behind the open triangle, its first lines kept together. */
export function drawCaution(flow: Flow, words: string, style: TextStyle = bodyStyle): void {
  const { doc } = flow;
  const lines = wrap(doc, words, flow.width - markIndent, style).length;
  flow.needs(Math.min(lines, 3) * lineHeight(style));
  const { y } = flow;
  artifact(doc, () => triangle(doc, flow.left + 0.5, y + 2, 9));
  flow.para(words, style, markIndent);
}

/** Cautions at the point of use, each behind the open triangle. */
export function drawCautions(flow: Flow, cautions: readonly string[]): void {
  for (const caution of cautions) drawCaution(flow, caution);
  flow.y += 2;
}

/** Room that cautions take, points. */
export function cautionsHeight(flow: Flow, cautions: readonly string[]): number {
  const lines = cautions.flatMap((text) =>
    wrap(flow.doc, text, flow.width - markIndent, bodyStyle),
  );
  return lines.length * lineHeight(bodyStyle) + cautions.length * 3;
}
