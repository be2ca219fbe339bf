import type { ReorderFacts } from '../../../shared/contract/stores.ts';
import { decimal } from '../../../shared/measure.ts';
import { isWhole, quantityText, runOutPercents, type StockUnit } from '../../../shared/stores.ts';
import type { Lot } from '../../schedule/issue.ts';
import { reorderPoint, safetyStock, safetyZ, timeToOrder } from '../../schedule/reorder.ts';
import type { ConsumableRow } from '../../storage/tables.ts';
import { coverageWeeks } from './coverage.ts';
import { leastWeeks, type Usage } from './usage.ts';

/** Of a chance of running out that nobody chose, percent; common practice in the textbooks. */
const usualRunOut = 5;

type Facts = Pick<
  ConsumableRow,
  | 'unit'
  | 'weekly_use'
  | 'weekly_use_spread'
  | 'wait_weeks'
  | 'wait_weeks_spread'
  | 'run_out_percent'
  | 'order_quantity'
  | 'on_order'
>;

interface Use {
  use: number | null;
  spread: number;
  from: ReorderFacts['useFrom'];
  weeks: number | null;
}

/** What was issued counts where there is enough of it, else what was entered. */
function useOf(row: Facts, usage: Usage | null): Use {
  if (usage !== null) {
    return { use: usage.mean, spread: usage.spread, from: 'moves', weeks: usage.weeks };
  }
  if (row.weekly_use === null) return { use: null, spread: 0, from: 'none', weeks: null };
  return { use: row.weekly_use, spread: row.weekly_use_spread ?? 0, from: 'entered', weeks: null };
}

interface Points {
  safety: number;
  at: number;
  /** Used while a delivery is waited for. */
  meanwhile: number;
}

function pointsOf(row: Facts, { use, spread }: Use): Points | null {
  if (use === null || use <= 0 || row.wait_weeks === null) return null;
  const chosen = runOutPercents.find((each) => each === row.run_out_percent) ?? usualRunOut;
  const flow = {
    use,
    useSpread: spread,
    wait: row.wait_weeks,
    waitSpread: row.wait_weeks_spread ?? 0,
  };
  const z = safetyZ[chosen];
  return {
    safety: safetyStock(flow, z),
    at: reorderPoint(flow, z),
    meanwhile: use * row.wait_weeks,
  };
}

/** Whole pieces, and whole units of what is measured: nobody orders a tenth of a millilitre. */
const rounded = (amount: number, unit: StockUnit) =>
  unit === 'fl oz' ? Math.ceil(amount * 10) / 10 : Math.ceil(amount);

/** What brings the stock over the reorder point, in whole order quantities where there is one. */
function amountToOrder(row: Facts, points: Points | null, have: number): number | null {
  if (row.order_quantity !== null) {
    const missing = points === null ? 0 : Math.max(0, points.at - have);
    return row.order_quantity * (Math.floor(missing / row.order_quantity) + 1);
  }
  if (points === null) return null;
  return rounded(Math.max(0, points.at + points.meanwhile - have), row.unit);
}

const weeksText = (weeks: number) => `${decimal(weeks)} ${weeks === 1 ? 'week' : 'weeks'}`;

function standing(row: Facts, inDate: number): string {
  const there = inDate > 0 ? `${quantityText(inDate, row.unit)} in date` : 'None in date';
  return row.on_order > 0 ? `${there}, ${quantityText(row.on_order, row.unit)} on order` : there;
}

function whySentence(row: Facts, { use, weeks }: Use, points: Points | null, inDate: number) {
  const have = standing(row, inDate);
  if (points !== null && use !== null) {
    const kept = isWhole(row.unit) ? Math.ceil(points.safety) : points.safety;
    const at = quantityText(isWhole(row.unit) ? Math.ceil(points.at) : points.at, row.unit);
    const over = weeks === null ? '' : `, from the last ${weeks} weeks`;
    return (
      `${have}; order at ${at}: ${quantityText(use, row.unit)} a week${over}, ` +
      `${weeksText(row.wait_weeks ?? 0)} of waiting, ` +
      `${quantityText(kept, row.unit)} kept against running out.`
    );
  }
  if (use === null) {
    return `${have}. Give the use in a week, or issue from here for ${leastWeeks} weeks, to know when to order.`;
  }
  if (use <= 0) return `${have}. None was issued in the last ${weeks ?? leastWeeks} weeks.`;
  return `${have}. Give the wait for a delivery to know when to order.`;
}

/** What is there: lots in the order they are used, and what of them is in date. */
export interface Stock {
  lots: readonly Lot[];
  inDate: number;
  today: string;
}

/** In the shelf's favour where nobody knows the use: then nothing is said to spoil. */
function coverageOf({ lots, today }: Stock, { use }: Use): number | null {
  return use === null || use <= 0 ? null : coverageWeeks(lots, use, today);
}

/** What is in date would be over its day before a delivery came. */
function expiresFirst(row: Facts, coverage: number | null): boolean {
  const { wait_weeks: wait, on_order: onOrder } = row;
  return wait !== null && coverage !== null && onOrder === 0 && coverage < wait;
}

/** Reorder point, safety stock, coverage and what to order of one consumable. Counted unit, weeks. */
export function reorderFacts(row: Facts, stock: Stock, usage: Usage | null): ReorderFacts {
  const used = useOf(row, usage);
  const points = pointsOf(row, used);
  const coverage = coverageOf(stock, used);
  const usable = Math.min(stock.inDate, (coverage ?? 0) * (used.use ?? 0));
  const have = stock.inDate + row.on_order;
  const isLow =
    points === null
      ? have <= 0 && (used.use === null || used.use > 0)
      : timeToOrder(stock.inDate, row.on_order, points.at);
  const isSpoiling = !isLow && expiresFirst(row, coverage);
  const toOrder = isLow || isSpoiling;
  const why = whySentence(row, used, points, stock.inDate);
  return {
    weeklyUse: used.use,
    weeklyUseSpread: used.use === null ? null : used.spread,
    useFrom: used.from,
    useWeeks: used.weeks,
    safetyStock: points?.safety ?? null,
    reorderAt: points?.at ?? null,
    coverageWeeks: coverage,
    toOrder,
    orderQuantity: toOrder ? amountToOrder(row, points, usable + row.on_order) : null,
    sentence: isSpoiling ? `${why} It expires before a delivery would come.` : why,
  };
}
