import { decimal } from './measure.ts';

/** What the strip tells; all weights in pounds-force at one draw. */
export interface StripFacts {
  arrivalLbf: number | null;
  nowLbf: number | null;
  targetLbf: number | null;
  /** Weights between which cutting stops. */
  stopBandLbf: readonly [number, number] | null;
  /** Forecast low, middle and high. */
  forecastLbf: readonly [number, number, number] | null;
}

export type StripMarkKind = 'arrival' | 'now' | 'target' | 'stop-band' | 'forecast';

/** One mark on the strip. Places run from 0 (left, light) to 1 (right, heavy). */
export interface StripMark {
  kind: StripMarkKind;
  at: number;
  /** Heavy end of a band. */
  to?: number;
  /** Middle of the forecast. */
  mid?: number;
}

export interface WeightStrip {
  minLbf: number;
  maxLbf: number;
  /** Places of round pounds, never more than 21. */
  ticks: number[];
  /** In drawing order: bands first, points on top. */
  marks: StripMark[];
  /** The same story in words. */
  text: string;
}

const tickSteps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const ticksAtMost = 21;
/** An empty strip still shows a scale. */
const emptyRange: readonly [number, number] = [40, 50];

const real = (value: number | null): number | null =>
  value !== null && Number.isFinite(value) ? value : null;

/** Facts that can be drawn: nothing infinite, bands light end first. */
function drawable(facts: StripFacts): StripFacts {
  const band = facts.stopBandLbf?.every(Number.isFinite) ? facts.stopBandLbf : null;
  const forecast = facts.forecastLbf?.every(Number.isFinite) ? facts.forecastLbf : null;
  const [low = 0, middle = 0, high = 0] = forecast?.toSorted((a, b) => a - b) ?? [];
  return {
    arrivalLbf: real(facts.arrivalLbf),
    nowLbf: real(facts.nowLbf),
    targetLbf: real(facts.targetLbf),
    stopBandLbf: band && [Math.min(...band), Math.max(...band)],
    forecastLbf: forecast && [low, middle, high],
  };
}

function range(facts: StripFacts): readonly [number, number] {
  const { arrivalLbf, nowLbf, targetLbf, stopBandLbf, forecastLbf } = facts;
  const points = [arrivalLbf, nowLbf, targetLbf].filter((value) => value !== null);
  const values = [...points, ...(stopBandLbf ?? []), ...(forecastLbf ?? [])];
  if (values.length === 0) return emptyRange;
  return [Math.floor(Math.min(...values) - 1), Math.ceil(Math.max(...values) + 1)];
}

function marksOf(facts: StripFacts, place: (lbf: number) => number): StripMark[] {
  const { stopBandLbf: band, forecastLbf: forecast } = facts;
  const marks: StripMark[] = [];
  if (forecast !== null) {
    const [low, middle, high] = forecast;
    marks.push({ kind: 'forecast', at: place(low), mid: place(middle), to: place(high) });
  }
  if (band !== null) marks.push({ kind: 'stop-band', at: place(band[0]), to: place(band[1]) });
  if (facts.targetLbf !== null) marks.push({ kind: 'target', at: place(facts.targetLbf) });
  if (facts.arrivalLbf !== null) marks.push({ kind: 'arrival', at: place(facts.arrivalLbf) });
  if (facts.nowLbf !== null) marks.push({ kind: 'now', at: place(facts.nowLbf) });
  return marks;
}

function span(low: number, high: number): string {
  return low === high ? decimal(low) : `${decimal(low)} to ${decimal(high)}`;
}

function inWords(facts: StripFacts): string {
  const { arrivalLbf, nowLbf, targetLbf, stopBandLbf: band, forecastLbf: forecast } = facts;
  const parts: string[] = [];
  if (arrivalLbf !== null) parts.push(`arrived ${decimal(arrivalLbf)}`);
  if (nowLbf !== null) parts.push(`now ${decimal(nowLbf)}`);
  if (forecast !== null)
    parts.push(`forecast ${decimal(forecast[1])} (${span(forecast[0], forecast[2])})`);
  if (band !== null) parts.push(`stop at ${span(band[0], band[1])}`);
  if (targetLbf !== null) parts.push(`target ${decimal(targetLbf)}`);
  if (parts.length === 0) return 'not weighed yet';
  const text = `${parts.join(', ')} lb`;
  return arrivalLbf === null && nowLbf === null ? `not weighed yet, ${text}` : text;
}

/**
 * Where everything goes on the thin weight scale that screens and papers share.
 * Pure geometry: the scale always reaches past the outermost weight by at least 1 lb,
 * so nothing falls off it and equal weights have room around them.
 */
export function weightStrip(given: StripFacts): WeightStrip {
  const facts = drawable(given);
  const [minLbf, maxLbf] = range(facts);
  const length = maxLbf - minLbf;
  const place = (lbf: number) => (lbf - minLbf) / length;
  const step = tickSteps.find((lb) => length / lb <= ticksAtMost - 1) ?? length;
  const first = Math.ceil(minLbf / step) * step;
  const count = Math.floor((maxLbf - first) / step) + 1;
  const ticks = Array.from({ length: count }, (_, i) => place(first + i * step));
  return { minLbf, maxLbf, ticks, marks: marksOf(facts, place), text: inWords(facts) };
}
