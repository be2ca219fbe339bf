import { expect } from 'vitest';
import { type DecodedCode, decode, pagesOf, placedText, untaggedDrawing } from './read-back.ts';

type Box = { left: number; right: number; top: number; bottom: number };

/** Points two boxes may share: rounding of the text extents. */
const slack = 0.3;

function overlap(a: Box, b: Box): boolean {
  return (
    a.left < b.right - slack &&
    b.left < a.right - slack &&
    a.top < b.bottom - slack &&
    b.top < a.bottom - slack
  );
}

/**
 * No text runs into other text, into a barcode's light margin, or off the paper;
 * everything drawn is content or marked as decoration.
 * @returns the barcodes of each page, as an independent decoder read them
 */
export async function expectCleanPages(
  bytes: Uint8Array,
  barQuietPt: number,
): Promise<DecodedCode[][]> {
  const read: DecodedCode[][] = [];
  for (const page of await pagesOf(bytes)) {
    const { width, height } = page.getViewport({ scale: 1 });
    const texts = await placedText(page);
    expect(texts.length).toBeGreaterThan(0);
    expect(await untaggedDrawing(page)).toBe(0);
    const clashes = texts.flatMap((a, i) =>
      texts.slice(i + 1).flatMap((b) => (overlap(a, b) ? [`${a.text} / ${b.text}`] : [])),
    );
    expect(clashes).toEqual([]);
    const off = texts.filter(
      (t) => t.left < 12 || t.top < 12 || t.right > width - 12 || t.bottom > height - 12,
    );
    expect(off.map((t) => t.text)).toEqual([]);
    const codes = await decode(page);
    read.push(codes);
    for (const { box, format } of codes) {
      const bars = format === 'Code128';
      // Order numbers make QR symbols of 21 modules a side; 4 of them stay light all round.
      const aside = bars ? barQuietPt : ((box.right - box.left) / 21) * 4;
      const over = bars ? 0 : aside;
      const light = {
        left: box.left - aside,
        right: box.right + aside,
        top: box.top - over,
        bottom: box.bottom + over,
      };
      expect(texts.filter((t) => overlap(t, light)).map((t) => t.text)).toEqual([]);
    }
  }
  return read;
}
