import type { BeforeAfterPhotograph } from './before-after.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { quiet } from './sheet.ts';

const gap = 16;
/** Points; an upright picture of a whole bow must leave room for the figures. */
const tallest = 140;
const labelStyle: TextStyle = { font: fonts.semibold, size: 10 };
const wordsStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };

/** Two pictures side by side in one height, or one alone. */
export function drawPhotographs(flow: Flow, photographs: readonly BeforeAfterPhotograph[]): void {
  const { doc } = flow;
  const width = (flow.width - gap) / 2;
  const sized = photographs.map((each) => {
    const scale = Math.min(width / each.widthPx, tallest / each.heightPx);
    const words = wrap(doc, each.words, width, wordsStyle);
    return { ...each, width: each.widthPx * scale, height: each.heightPx * scale, lines: words };
  });
  if (sized.length === 0) return;
  const height = Math.max(...sized.map((each) => each.height));
  const lines = Math.max(...sized.map((each) => each.lines.length));
  flow.needs(height + (lines + 2) * lineHeight(labelStyle));
  flow.y += 4;
  const top = flow.y + lineHeight(labelStyle) + 2;
  sized.forEach((each, i) => {
    const x = flow.left + i * (width + gap);
    const { y } = flow;
    flow.tagged('P', () => drawLines(doc, [each.label], { x, y }, labelStyle));
    flow.tagged(
      'Figure',
      () =>
        doc.image(Buffer.from(each.jpeg, 'base64'), x, top, {
          width: each.width,
          height: each.height,
        }),
      {
        alt: `Photograph of the bow, ${each.label.toLowerCase()}: ${each.words}`,
        bbox: [x, top, x + each.width, top + each.height],
      },
    );
    flow.tagged('P', () => drawLines(doc, each.lines, { x, y: top + height + 3 }, wordsStyle));
  });
  flow.y = top + height + 3 + lines * lineHeight(wordsStyle) + 4;
}
