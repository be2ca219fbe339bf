import type { Finding } from '../../../shared/contract/findings.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { openStops, stopsOf } from './open-stops.ts';
import { writeFinding } from './write-finding.ts';

/** Findings of an order, newest first, with those of other orders that still stop its bow. */
export async function findingsOf(shop: OpenShop, order: OrderRow): Promise<Finding[]> {
  const stops = stopsOf(await openStops(shop.read), order).map((stop) => stop.id);
  const rows = await shop.read
    .selectFrom('finding')
    .innerJoin('person', 'person.id', 'finding.found_by')
    .selectAll('finding')
    .select('person.name as person_name')
    .where((eb) => eb.or([eb('order_id', '=', order.id), eb('finding.id', 'in', stops)]))
    .orderBy('found_at', 'desc')
    .orderBy('finding.id', 'desc')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    grade: row.grade,
    place: row.place,
    note: row.note,
    foundAt: row.found_at,
    foundBy: row.person_name,
    resolvedAt: row.resolved_at,
    resolvedHow: row.resolved_how,
  }));
}

export function addFinding(
  ctx: ShopContext,
  input: ContractInputs['findings']['add'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'findings.add' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    return changedOf(await writeFinding(trx, ctx, order, input));
  });
}

export function resolveFinding(
  ctx: ShopContext,
  input: ContractInputs['findings']['resolve'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'findings.resolve' }, async (trx) => {
    const finding = await trx.db
      .selectFrom('finding')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (finding === undefined) throw notFound('finding', input.id);
    trx.about({ orderId: finding.order_id, bowId: finding.bow_id });
    if (finding.resolved_at !== null) {
      throw new ShopError('CONFLICT', 'This finding is already resolved.');
    }
    if (finding.grade === 'stop' && ctx.actor.role === 'office') {
      throw new ShopError(
        'NOT_ALLOWED',
        'A stop finding is resolved by whoever inspected the repair.',
      );
    }
    const row = await trx.update('finding', finding.id, input.rowVersion, {
      resolved_at: trx.at,
      resolved_how: input.how,
    });
    await note(trx, ctx, finding.order_id, {
      kind: 'finding',
      summary: `Resolved (${finding.grade}): ${finding.place}`,
      reason: input.how,
    });
    return changedOf(row);
  });
}
