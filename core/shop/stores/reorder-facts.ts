import type { ReorderFacts } from '../../../shared/contract/stores.ts';
import { decimal } from '../../../shared/measure.ts';
import { isWhole, quantityText, runOutPercents, type StockUnit } from '../../../shared/stores.ts';
import { reorderPoint, safetyStock, safetyZ, timeToOrder } from '../../schedule/reorder.ts';
import type { ConsumableRow } from '../../storage/tables.ts';
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

/** Reorder point, safety stock, coverage and what to order of one consumable. Counted unit, weeks. */
export function reorderFacts(row: Facts, inDate: number, usage: Usage | null): ReorderFacts {
  const used = useOf(row, usage);
  const points = pointsOf(row, used);
  const have = inDate + row.on_order;
  const toOrder =
    points === null
      ? have <= 0 && (used.use === null || used.use > 0)
      : timeToOrder(inDate, row.on_order, points.at);
  return {
    weeklyUse: used.use,
    weeklyUseSpread: used.use === null ? null : used.spread,
    useFrom: used.from,
    useWeeks: used.weeks,
    safetyStock: points?.safety ?? null,
    reorderAt: points?.at ?? null,
    coverageWeeks: used.use === null || used.use <= 0 ? null : inDate / used.use,
    toOrder,
    orderQuantity: toOrder ? amountToOrder(row, points, have) : null,
    sentence: whySentence(row, used, points, inDate),
  };
}
