import type { Kysely } from 'kysely';
import type { FinishSystem } from '../../../shared/contract/finish.ts';
import { hazardCaution, whoDecides } from '../../../shared/hazards.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import type { FinishSystemRow, Tables } from '../../storage/tables.ts';
import { notFound } from '../record.ts';

export function sheetOf(row: { sheet_json: string }): FinishSheet {
  return JSON.parse(row.sheet_json) as FinishSheet;
}

/** What a sheet's hazards ask for at the point of use, and who has the last word. */
export function cautionsOf(sheet: FinishSheet): string[] {
  if (sheet.hazards.length === 0) return [];
  return [...new Set(sheet.hazards.map((hazard) => hazardCaution[hazard])), whoDecides];
}

/** A system with the names of what it is issued from. */
export type NamedSystem = FinishSystemRow & {
  resin_name: string | null;
  hardener_name: string | null;
  thinner_name: string | null;
};

export function namedSystems(db: Kysely<Tables>) {
  return db
    .selectFrom('finish_system')
    .leftJoin('consumable as resin', 'resin.id', 'finish_system.resin_id')
    .leftJoin('consumable as hardener', 'hardener.id', 'finish_system.hardener_id')
    .leftJoin('consumable as thinner', 'thinner.id', 'finish_system.thinner_id')
    .selectAll('finish_system')
    .select(['resin.name as resin_name', 'hardener.name as hardener_name'])
    .select('thinner.name as thinner_name');
}

export function systemOf(row: NamedSystem): FinishSystem {
  const sheet = sheetOf(row);
  return {
    id: row.id,
    rowVersion: row.row_version,
    name: row.name,
    kind: row.kind,
    sheet: sheet as FinishSystem['sheet'],
    resinId: row.resin_id,
    hardenerId: row.hardener_id,
    thinnerId: row.thinner_id,
    active: row.active === 1,
    resinName: row.resin_name ?? '',
    hardenerName: row.hardener_name ?? '',
    thinnerName: row.thinner_name ?? '',
    cautions: cautionsOf(sheet),
  };
}

/** @throws ShopError NOT_FOUND. */
export async function readSystem(db: Kysely<Tables>, id: string): Promise<NamedSystem> {
  const row = await namedSystems(db).where('finish_system.id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('finish system', id);
  return row;
}
