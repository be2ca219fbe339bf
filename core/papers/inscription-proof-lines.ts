import { ShopError } from '../../shared/errors.ts';
import { emPerCapital, lineStepPerCapital } from '../../shared/inscription.ts';
import { decimal } from '../../shared/measure.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { type TextStyle, useStyle } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';

/** The lines of an inscription as they shall stand on the bow. */
export interface LetteredLines {
  lines: readonly string[];
  /** Of a capital, inches. */
  letterHeightIn: number;
}

/** Sizes in points, at true size. */
export interface LetterSizes {
  style: TextStyle;
  capital: number;
  /** From base line to base line. */
  step: number;
  /** From the top of the first capital to the last base line and the tails below it. */
  height: number;
}

/** Tails of g and p hang this far below the base line, in heights of a capital (Source Sans 3). */
const tail = 0.32;

export function letterSizes({ lines, letterHeightIn }: LetteredLines): LetterSizes {
  const capital = letterHeightIn * 72;
  const step = capital * lineStepPerCapital;
  return {
    style: { font: fonts.regular, size: capital * emPerCapital, color: '#000000' },
    capital,
    step,
    height: capital + Math.max(0, lines.length - 1) * step + capital * tail,
  };
}

/**
 * A true size is never shrunk to fit: what does not fit is refused by name.
 * @param width points there are
 * @throws ShopError UNPRINTABLE
 */
export function refuseTooLong(doc: Doc, lettered: LetteredLines, width: number): void {
  useStyle(doc, letterSizes(lettered).style);
  for (const line of lettered.lines) {
    const needed = doc.widthOfString(line);
    if (needed <= width) continue;
    const shown = line.length > 60 ? `${line.slice(0, 60)}…` : line;
    throw new ShopError(
      'UNPRINTABLE',
      `"${shown}" is ${decimal(needed / 72, 2)}" long in letters of ${decimal(lettered.letterHeightIn, 3)}", and there are ${decimal(width / 72, 2)}": choose smaller letters or break the line.`,
      { letterHeightIn: 'Choose smaller letters, or break the line.' },
    );
  }
}

/** One line with its base line at `base`; outlined letters are for tracing. */
export function letterLine(
  doc: Doc,
  line: string,
  at: { x: number; base: number },
  style: TextStyle,
  manner: 'solid' | 'outline' = 'solid',
): void {
  useStyle(doc, style);
  if (manner === 'outline') doc.lineWidth(0.4).strokeColor('#000000');
  doc.text(line, at.x, at.base, {
    lineBreak: false,
    baseline: 'alphabetic',
    stroke: manner === 'outline',
    fill: manner === 'solid',
  });
}

/** All lines from the flow's place on, each a paragraph of its own; `x` points from the left. */
export function letterBlock(flow: Flow, lettered: LetteredLines, x: number, top: number): void {
  const { style, capital, step } = letterSizes(lettered);
  for (const [index, line] of lettered.lines.entries()) {
    if (line.trim() === '') continue;
    const base = top + capital + index * step;
    flow.tagged('P', () => letterLine(flow.doc, line, { x, base }, style));
  }
}
