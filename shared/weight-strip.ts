import { decimal } from './measure.ts';

export interface StripFacts {
  arrivalLbf: number | null;
  nowLbf: number | null;
  targetLbf: number | null;
  /** Weights between which cutting stops, low and high. */
  stopBandLbf: readonly [number, number] | null;
  /** Forecast low, middle and high. */
  forecastLbf: readonly [number, number, number] | null;
}

export type StripMarkKind = 'arrival' | 'now' | 'target' | 'stop-band' | 'forecast';

/** One mark on the strip. Places run from 0 (left, light) to 1 (right, heavy). */
export interface StripMark {
  kind: StripMarkKind;
  at: number;
  to?: number;
}

export interface WeightStrip {
  minLbf: number;
  maxLbf: number;
  /** Places of whole pounds, or of every fifth pound on a long strip. */
  ticks: number[];
  marks: StripMark[];
  /** The same story in words. */
  text: string;
}

function known(facts: StripFacts): number[] {
  const { arrivalLbf, nowLbf, targetLbf } = facts;
  return [
    arrivalLbf,
    nowLbf,
    targetLbf,
    ...(facts.stopBandLbf ?? []),
    ...(facts.forecastLbf ?? []),
  ].filter((value): value is number => value !== null && Number.isFinite(value));
}

function inWords(facts: StripFacts): string {
  const parts = [
    facts.arrivalLbf === null ? null : `arrived ${decimal(facts.arrivalLbf)}`,
    facts.nowLbf === null ? null : `now ${decimal(facts.nowLbf)}`,
    facts.stopBandLbf === null
      ? null
      : `stop between ${decimal(facts.stopBandLbf[0])} and ${decimal(facts.stopBandLbf[1])}`,
    facts.targetLbf === null ? null : `target ${decimal(facts.targetLbf)}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'not weighed yet' : `${parts.join(', ')} lb`;
}

/**
 * Where everything goes on the thin weight scale that screens and papers share.
 * Pure geometry: an empty strip still has a scale, equal weights still have room around them.
 */
export function weightStrip(facts: StripFacts): WeightStrip {
  const values = known(facts);
  const low = values.length === 0 ? 40 : Math.min(...values);
  const high = values.length === 0 ? 50 : Math.max(...values);
  const minLbf = Math.floor(low - 1);
  const maxLbf = Math.ceil(high + 1);
  const place = (value: number) => (value - minLbf) / (maxLbf - minLbf);
  const marks: StripMark[] = [];
  const { stopBandLbf: band, forecastLbf: forecast } = facts;
  if (forecast !== null)
    marks.push({ kind: 'forecast', at: place(forecast[0]), to: place(forecast[2]) });
  if (band !== null) marks.push({ kind: 'stop-band', at: place(band[0]), to: place(band[1]) });
  if (facts.targetLbf !== null) marks.push({ kind: 'target', at: place(facts.targetLbf) });
  if (facts.arrivalLbf !== null) marks.push({ kind: 'arrival', at: place(facts.arrivalLbf) });
  if (facts.nowLbf !== null) marks.push({ kind: 'now', at: place(facts.nowLbf) });
  const step = maxLbf - minLbf > 20 ? 5 : 1;
  const first = Math.ceil(minLbf / step) * step;
  const count = Math.floor((maxLbf - first) / step) + 1;
  const ticks = Array.from({ length: count }, (_, i) => place(first + i * step));
  return { minLbf, maxLbf, ticks, marks, text: inWords(facts) };
}
