import { less } from '../../schedule/stock.ts';
import type { StockMoveRow } from '../../storage/tables.ts';
import { addDays } from '../day.ts';

/** How far back use is looked at, weeks: a season, so that a change of work shows. */
export const usageWeeks = 13;
/** Fewer weeks say too little: then what somebody entered counts. */
export const leastWeeks = 4;

/** Kinds that are use. What a count found missing was used and not booked. */
export const useKinds: readonly StockMoveRow['kind'][] = ['issued', 'returned', 'counted'];

export interface DatedMove {
  /** The shop's day, `YYYY-MM-DD`. */
  day: string;
  kind: StockMoveRow['kind'];
  /** In above 0, out below. */
  quantity: number;
}

/** Use in a week, in the counted unit, over so many whole weeks before today. */
export interface Usage {
  mean: number;
  /** Standard deviation from week to week, of the sample. */
  spread: number;
  weeks: number;
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

function sampleSpread(values: readonly number[], mean: number): number {
  const sum = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return Math.sqrt(sum / (values.length - 1));
}

/**
 * Use in a week from what was issued less what came back, week by week back from today, today
 * included. What was discarded is not use: ordering more of it would only spoil more.
 * @param since day of the first move of all.
 * @returns null where the first move is under {@link leastWeeks} weeks ago.
 */
export function usageFrom(moves: readonly DatedMove[], since: string, today: string): Usage | null {
  const weeks = Math.min(usageWeeks, Math.floor((daysBetween(since, today) + 1) / 7));
  if (weeks < leastWeeks) return null;
  const first = addDays(today, 1 - weeks * 7);
  const byWeek = Array.from({ length: weeks }, () => 0);
  for (const { day, kind, quantity } of moves) {
    if (!useKinds.includes(kind) || day < first || day > today) continue;
    const week = Math.floor(daysBetween(first, day) / 7);
    byWeek[week] = less(byWeek[week] ?? 0, quantity);
  }
  const mean = byWeek.reduce((sum, used) => sum + used, 0) / weeks;
  return { mean: Math.max(0, mean), spread: sampleSpread(byWeek, mean), weeks };
}
