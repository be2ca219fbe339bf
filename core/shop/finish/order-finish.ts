import type { Kysely } from 'kysely';
import type {
  Coat,
  OrderFinish,
  OrderFinishNow,
  Sanding,
} from '../../../shared/contract/finish.ts';
import type { BowSection } from '../../../shared/finish.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import type { Grit } from '../../../shared/grit.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { Tables } from '../../storage/tables.ts';
import { readFacts } from '../gates/facts.ts';
import { missingAt } from '../gates/gates.ts';
import { readOrder } from '../orders/order-row.ts';
import { readClockTrouble } from './clock-trouble.ts';
import { cureTimes, passedOf } from './cure-of.ts';
import { filmWeightOf } from './film-weight.ts';
import { gritOfRow, lastGritsOf, sizedGritOf } from './last-grits.ts';
import {
  airSince,
  type FinishRows,
  type StoredCoat,
  type StoredSanding,
  storedFinishOf,
} from './stored.ts';
import { cautionsOf, sheetOf } from './system-row.ts';
import { lastCoat, standingCoats, windowOf } from './window-of.ts';

function coatOf(row: StoredCoat): Coat {
  return {
    id: row.id,
    rowVersion: row.row_version,
    sessionId: row.session_id,
    purpose: row.purpose,
    sections: JSON.parse(row.sections_json) as BowSection[],
    coats: row.coats,
    wetMil: row.wet_mil,
    dryMil: row.dry_mil,
    scuffed:
      row.scuffed_json === null ? null : (JSON.parse(row.scuffed_json) as { grit: Grit | null }),
    at: row.at,
    systemName: row.system_name,
    batchId: row.batch_id,
    batchName: row.batch_name ?? '',
    overrideReason: row.override_reason,
    personName: row.person_name,
    struckReason: row.struck_reason,
  };
}

function sandingOf(row: StoredSanding): Sanding {
  return {
    id: row.id,
    rowVersion: row.row_version,
    section: row.section as BowSection,
    substrate: row.substrate,
    grit: sizedGritOf(gritOfRow(row)),
    strokes: row.strokes,
    wiped: row.wiped === 1,
    isLast: row.is_last === 1,
    note: row.note,
    at: row.at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  };
}

function chosenOf({ chosen }: FinishRows): OrderFinish['chosen'] {
  if (chosen === null) return null;
  const sheet = sheetOf(chosen);
  return {
    id: chosen.id,
    rowVersion: chosen.row_version,
    finishSystemId: chosen.finish_system_id,
    chosenAt: chosen.chosen_at,
    personName: chosen.person_name,
    sheet: sheet as NonNullable<OrderFinish['chosen']>['sheet'],
    sheetChanged: chosen.sheet_json !== chosen.system_sheet_json,
    cautions: cautionsOf(sheet),
  };
}

/** Coats of finish; a seal coat is under them. */
export function coatsOn(rows: Pick<FinishRows, 'coats'>): number {
  return standingCoats(rows)
    .filter((coat) => coat.purpose !== 'seal')
    .reduce((sum, coat) => sum + coat.coats, 0);
}

/** What the records say, whatever time it is. */
export async function orderFinishOf(
  db: Kysely<Tables>,
  order: { id: string; bow_id: string | null; limb_set_id: string | null },
  rows: FinishRows,
): Promise<OrderFinish> {
  const sheet = rows.chosen === null ? null : sheetOf(rows.chosen);
  return {
    chosen: chosenOf(rows),
    sandings: rows.sandings.map(sandingOf).reverse().slice(0, 1000),
    lastGrits: lastGritsOf(rows.sandings, sheet),
    coats: rows.coats.map(coatOf).reverse().slice(0, 500),
    coatsOn: coatsOn(rows),
    lastCoatAt: lastCoat(rows)?.at ?? null,
    surfaces: rows.surfaces
      .map((row) => ({
        id: row.id,
        at: row.at,
        surfaceF: row.surface_f,
        personName: row.person_name,
      }))
      .slice(-500),
    cure: cureTimes(rows),
    film: await filmWeightOf(db, order, rows),
  };
}

const gates: readonly Stage[] = ['finish', 'final-check', 'packed'];
const ofFinish: readonly string[] = [
  'last-grit',
  'finish-system',
  'air',
  'string-and-flex',
  'safe-to-wrap',
];

async function missingOf(shop: OpenShop, orderId: string, now: string): Promise<MissingItem[]> {
  const facts = await readFacts(shop.read, await readOrder(shop.read, orderId), now);
  const ahead = gates.filter(
    (gate) => facts.route.indexOf(gate) > facts.route.indexOf(facts.stage),
  );
  return ahead
    .flatMap((gate) => missingAt(gate, facts))
    .filter((missing) => ofFinish.includes(missing.item));
}

/** @see contract.finish.order */
export async function orderFinishNow(shop: OpenShop, orderId: string): Promise<OrderFinishNow> {
  const order = await readOrder(shop.read, orderId);
  const now = shop.now();
  const rows = await storedFinishOf(shop.read, orderId);
  const coat = lastCoat(rows);
  const airs = coat === null ? [] : await airSince(shop.read, coat.at);
  const trouble = await readClockTrouble(shop.read, now);
  return {
    orderId,
    ...(await orderFinishOf(shop.read, order, rows)),
    window: windowOf(rows, airs, now),
    missing: await missingOf(shop, orderId, now),
    passed: passedOf(rows, now, trouble),
    clockTrouble: trouble,
  };
}
