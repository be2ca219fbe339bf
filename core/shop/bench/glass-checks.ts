import { type GlassSign, glassSignLabels, glassSigns } from '../../../shared/bench.ts';
import type { GlassCheck } from '../../../shared/contract/bench-records.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { GlassCheckRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { bowOnBench } from './bow-on-bench.ts';
import { lastRemovalId } from './last-removal.ts';

const columns = {
  showThrough: 'show_through',
  strands: 'strands',
  runOut: 'run_out',
  exposedCore: 'exposed_core',
} as const satisfies Record<GlassSign, keyof GlassCheckRow>;

export const signsOf = (row: GlassCheckRow): GlassSign[] =>
  glassSigns.filter((sign) => row[columns[sign]] === 1);

/** In words; a failed check from before the signs were recorded says so. */
export function glassWords(row: GlassCheckRow): string {
  const seen = signsOf(row).map((sign) => glassSignLabels[sign].toLowerCase());
  const signs = seen.length === 0 ? 'signs not recorded' : seen.join(', ');
  return row.outcome === 'ok' ? 'nothing seen' : signs;
}

export async function glassChecksOf(shop: OpenShop, orderId: string): Promise<GlassCheck[]> {
  const rows = await shop.read
    .selectFrom('glass_check')
    .innerJoin('person', 'person.id', 'glass_check.person_id')
    .selectAll('glass_check')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('checked_at', 'desc')
    .orderBy('glass_check.id', 'desc')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    outcome: row.outcome,
    signs: signsOf(row),
    words: glassWords(row),
    note: row.note,
    at: row.checked_at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  }));
}

/** @see contract.bench.checkGlass */
export function checkGlass(
  ctx: ShopContext,
  input: ContractInputs['bench']['checkGlass'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'bench.checkGlass' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    const bowId = bowOnBench(trx, order);
    const flag = (seen: boolean) => (seen ? 1 : 0);
    const row = await trx.insert('glass_check', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: bowId,
      removal_id: await lastRemovalId(trx.db, order.id),
      show_through: flag(input.showThrough),
      strands: flag(input.strands),
      run_out: flag(input.runOut),
      exposed_core: flag(input.exposedCore),
      outcome: glassSigns.some((sign) => input[sign]) ? 'not-ok' : 'ok',
      note: input.note,
      checked_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    const words = input.note === '' ? '' : `; ${input.note}`;
    await note(trx, ctx, order.id, {
      kind: 'glass-check',
      summary: `Glass check: ${glassWords(row)}${words}`.slice(0, 1000),
    });
    return changedOf(row);
  });
}
