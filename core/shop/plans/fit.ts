import { decimal, inchFraction } from '../../../shared/measure.ts';
import { tillerRange } from '../../../shared/tiller-text.ts';
import type { OpenShop } from '../../storage/context.ts';
import type {
  BowRow,
  GeometryRow,
  LimbSetRow,
  OrderRow,
  ReadingRow,
  WeightPlanRow,
} from '../../storage/tables.ts';
import { changedFacts, recordedFactsOf } from './recorded-facts.ts';
import { asRecordedOf } from './stored.ts';

/** Rows that a plan is held against. */
export interface FitRecords {
  order: OrderRow;
  bow: BowRow | null;
  /** Of the order and, where it was another, of the plan. */
  limbSets: readonly LimbSetRow[];
  /** All measurements of the bow, newest first. */
  geometries: readonly GeometryRow[];
  readings: readonly ReadingRow[];
}

export interface PlanFit {
  ok: boolean;
  /** What has changed since, one sentence each. */
  why: string[];
}

/** A tiller this near to what the order asks for is that, inches. */
const tillerWithinIn = 1 / 64 + 1e-9;

const weight = (lbf: number | null, drawIn: number | null) =>
  lbf === null || drawIn === null ? 'none' : `${decimal(lbf)} lb @ ${decimal(drawIn, 4)}"`;

function targetChanges(plan: WeightPlanRow, { order }: FitRecords): string[] {
  const [then, now] = [
    weight(plan.target_lbf, plan.draw_in),
    weight(order.target_weight_lbf, order.target_draw_in),
  ];
  return then === now ? [] : [`The target changed from ${then} to ${now}.`];
}

/** Whether the tiller of a plan is what the order's words ask for; words without a figure ask nothing. */
export function tillerSuits(tillerIn: number, orderText: string): boolean {
  const asked = tillerRange(orderText);
  if (asked === null) return true;
  return tillerIn >= asked.fromIn - tillerWithinIn && tillerIn <= asked.toIn + tillerWithinIn;
}

function tillerChanges(plan: WeightPlanRow, { order }: FitRecords): string[] {
  if (tillerSuits(plan.tiller_target_in, order.tiller_target)) return [];
  const from = `${inchFraction(plan.tiller_target_in, 64)} in`;
  return [`The tiller wanted changed from ${from} to "${order.tiller_target}".`];
}

function limbChanges(plan: WeightPlanRow, { order, limbSets }: FitRecords): string[] {
  if (plan.bow_id !== order.bow_id) return ['The order is about another bow by now.'];
  if (plan.limb_set_id === order.limb_set_id) return [];
  const name = (id: string | null) =>
    id === null ? "the bow's own" : `"${limbSets.find((set) => set.id === id)?.name ?? 'unknown'}"`;
  return [
    `The limbs on the order changed from ${name(plan.limb_set_id)} to ${name(order.limb_set_id)}.`,
  ];
}

/** The newest measurement of these limbs that stands. */
export function latestGeometry(
  geometries: readonly GeometryRow[],
  limbSetId: string | null,
): GeometryRow | null {
  const those = geometries.filter(
    (one) => one.struck_reason === null && one.limb_set_id === limbSetId,
  );
  return those.reduce<GeometryRow | null>(
    (newest, one) => (newest === null || one.version > newest.version ? one : newest),
    null,
  );
}

function geometryChanges(plan: WeightPlanRow, { geometries }: FitRecords): string[] {
  const latest = latestGeometry(geometries, plan.limb_set_id);
  if ((latest?.id ?? null) === plan.geometry_id) return [];
  const used = geometries.find(({ id }) => id === plan.geometry_id);
  const then = used === undefined ? 'no measurement' : `measurement ${used.version}`;
  if (used !== undefined && used.struck_reason !== null) {
    return [`The limbs' ${then}, which it rests on, was struck out: ${used.struck_reason}.`];
  }
  return [`The limbs were measured again: from ${then} to measurement ${latest?.version ?? '?'}.`];
}

function readingChanges(plan: WeightPlanRow, { readings }: FitRecords): string[] {
  if (plan.reading_id === null) return [];
  const used = readings.find(({ id }) => id === plan.reading_id);
  if (used === undefined || used.struck_reason === null) return [];
  const lbf = weight(plan.weight_lbf, plan.draw_in);
  return [`The weighing of ${lbf}, which it rests on, was struck out: ${used.struck_reason}.`];
}

function bowChanges(plan: WeightPlanRow, { bow, limbSets }: FitRecords): string[] {
  if (bow === null || bow.id !== plan.bow_id) return [];
  const set = limbSets.find(({ id }) => id === plan.limb_set_id) ?? null;
  return changedFacts(asRecordedOf(plan), recordedFactsOf(bow, set));
}

/**
 * Whether an accepted plan still fits the records it was made from, and what has changed: bow,
 * limbs, measurements, the weighing it rests on, target, draw, tiller. Pure.
 */
export function fitOf(plan: WeightPlanRow, records: FitRecords): PlanFit {
  const why = [
    ...limbChanges(plan, records),
    ...targetChanges(plan, records),
    ...tillerChanges(plan, records),
    ...geometryChanges(plan, records),
    ...readingChanges(plan, records),
    ...bowChanges(plan, records),
  ].map((sentence) => sentence.slice(0, 400));
  return { ok: why.length === 0, why };
}

export async function readFitRecords(db: OpenShop['read'], order: OrderRow): Promise<FitRecords> {
  const bowId = order.bow_id ?? '';
  const bow = await db.selectFrom('bow').selectAll().where('id', '=', bowId).executeTakeFirst();
  const limbSets = await db
    .selectFrom('limb_set')
    .selectAll()
    .where('bow_id', '=', bowId)
    .execute();
  const geometries = await db
    .selectFrom('geometry')
    .selectAll()
    .where('bow_id', '=', bowId)
    .orderBy('version', 'desc')
    .execute();
  const readings = await db
    .selectFrom('reading')
    .selectAll()
    .where('order_id', '=', order.id)
    .execute();
  return { order, bow: bow ?? null, limbSets, geometries, readings };
}
