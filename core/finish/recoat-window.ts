import { refuseField } from '../../shared/errors.ts';
import { refuseBelowZero } from './refuse.ts';

/**
 * A span after a coat in which another may follow. A two-part finish has one open span and one
 * that asks for scuffing; some sprays have an early span and a late one with none between.
 */
export interface RecoatSpan {
  /** Hours after the coat. */
  fromH: number;
  /** Hours after the coat; null where the sheet sets no end. */
  toH: number | null;
  /** The film is scuffed first. */
  scuff: boolean;
}

/** One line of a sheet's recoat table, as printed. */
export interface RecoatBand {
  /** Surface temperatures the line is for, both included, Fahrenheit. */
  fromF: number;
  toF: number;
  /** In order, not overlapping; at least one. */
  spans: readonly RecoatSpan[];
}

const noEnd = Number.POSITIVE_INFINITY;

/** @throws ShopError BAD_INPUT naming what is wrong with the table. */
export function refuseOddBands(bands: readonly RecoatBand[]): void {
  if (bands.length === 0) refuseField('recoat', 'Enter at least one recoat line.');
  for (const [index, band] of bands.entries()) {
    const field = `recoat.${index}`;
    const before = bands[index - 1];
    if (!(band.fromF < band.toF))
      refuseField(field, `Recoat line ${index + 1} must rise in temperature.`);
    if (before !== undefined && band.fromF < before.toF) {
      refuseField(field, 'Recoat lines must go up in temperature without overlap.');
    }
    refuseOddSpans(field, band.spans, index + 1);
  }
}

function refuseOddSpans(field: string, spans: readonly RecoatSpan[], line: number): void {
  if (spans.length === 0) refuseField(field, `Recoat line ${line} needs its hours.`);
  let end = 0;
  for (const span of spans) {
    refuseBelowZero(field, span.fromH, `Hours in recoat line ${line}`);
    if (span.fromH < end || (span.toH ?? noEnd) <= span.fromH) {
      refuseField(field, `Hours in recoat line ${line} must follow each other.`);
    }
    end = span.toH ?? noEnd;
  }
}

/** Where both allow a coat; scuffed where either asks for it. */
function both(a: readonly RecoatSpan[], b: readonly RecoatSpan[]): RecoatSpan[] {
  return a.flatMap((one) =>
    b.flatMap((other) => {
      const fromH = Math.max(one.fromH, other.fromH);
      const end = Math.min(one.toH ?? noEnd, other.toH ?? noEnd);
      if (end <= fromH) return [];
      return [{ fromH, toH: end === noEnd ? null : end, scuff: one.scuff || other.scuff }];
    }),
  );
}

/**
 * The spans that count at a surface temperature; null where it lies below the first or above the
 * last line. Printed lines leave holes (60-70, 71-80: 70.5 is in neither, and the columns in C and
 * F are rounded apart): in a hole a coat must be allowed by the lines on both sides.
 * @throws ShopError BAD_INPUT for an odd table.
 */
export function spansAt(bands: readonly RecoatBand[], surfaceF: number): RecoatSpan[] | null {
  refuseOddBands(bands);
  const inside = bands.filter((band) => band.fromF <= surfaceF && surfaceF <= band.toF);
  const below = bands.findLast((band) => band.toF < surfaceF);
  const above = bands.find((band) => band.fromF > surfaceF);
  const counting = inside.length > 0 ? inside : below && above ? [below, above] : [];
  const [first, ...others] = counting;
  if (first === undefined) return null;
  return others.reduce<RecoatSpan[]>((spans, band) => both(spans, band.spans), [...first.spans]);
}
