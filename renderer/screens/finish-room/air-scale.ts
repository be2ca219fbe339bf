/** The finish room's air as it is drawn: everything in Fahrenheit. */
export interface AirFacts {
  airF: number | null;
  /** As measured; null where it was not. */
  surfaceF: number | null;
  dewPointF: number | null;
  /** Least surface above dew point, Fahrenheit degrees as a difference. */
  leastMarginF: number;
  /** Air temperatures of the sheet; null where no finish is chosen. */
  limitsF: { from: number; to: number } | null;
}

export interface AirMark {
  kind: 'dew' | 'too-close' | 'air' | 'surface' | 'limits';
  /** Place from the left end, 0 to 1. */
  at: number;
  /** Right end of what has a width. */
  to?: number;
}

export interface AirTick {
  at: number;
  text: string;
}

export interface AirScale {
  marks: AirMark[];
  ticks: AirTick[];
}

/** Degrees left and right of everything that is drawn. */
const beside = 5;
const leastSpan = 30;

function ends(facts: AirFacts): { low: number; high: number } | null {
  const { airF, surfaceF, dewPointF, leastMarginF, limitsF } = facts;
  const drawn: number[] = [
    airF,
    surfaceF,
    dewPointF,
    dewPointF === null ? null : dewPointF + leastMarginF,
    limitsF?.from ?? null,
    limitsF?.to ?? null,
  ].filter((value): value is number => value !== null && Number.isFinite(value));
  if (drawn.length === 0) return null;
  const low = Math.min(...drawn) - beside;
  const high = Math.max(...drawn) + beside;
  const short = Math.max(0, leastSpan - (high - low)) / 2;
  return { low: low - short, high: high + short };
}

/** Ten degrees between ticks, twenty where the scale is long. */
function tickTemperatures(low: number, high: number): number[] {
  const step = high - low > 90 ? 20 : 10;
  const first = Math.ceil(low / step) * step;
  return Array.from({ length: Math.floor((high - first) / step) + 1 }, (_, i) => first + i * step);
}

/** Where everything stands on one scale in Fahrenheit; null while nothing is known. */
export function airScale(facts: AirFacts): AirScale | null {
  const found = ends(facts);
  if (found === null) return null;
  const { low, high } = found;
  const place = (value: number) => (value - low) / (high - low);
  const { airF, surfaceF, dewPointF, leastMarginF, limitsF } = facts;
  const marks: AirMark[] = [];
  if (dewPointF !== null) {
    marks.push({ kind: 'dew', at: 0, to: place(dewPointF) });
    marks.push({ kind: 'too-close', at: place(dewPointF), to: place(dewPointF + leastMarginF) });
  }
  if (limitsF !== null) {
    marks.push({ kind: 'limits', at: place(limitsF.from), to: place(limitsF.to) });
  }
  if (airF !== null && Number.isFinite(airF)) marks.push({ kind: 'air', at: place(airF) });
  if (surfaceF !== null && Number.isFinite(surfaceF)) {
    marks.push({ kind: 'surface', at: place(surfaceF) });
  }
  const ticks = tickTemperatures(low, high).map((value) => ({
    at: place(value),
    text: String(value),
  }));
  return { marks, ticks };
}
