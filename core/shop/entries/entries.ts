import type { Entry } from '../../../shared/contract/entries.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { entryKinds } from '../../../shared/entries.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { readFacts } from '../gates/facts.ts';
import { passGates } from '../gates/gates.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';

type RecordResult = ContractOutputs['entries']['record'];

export async function entriesOf(shop: OpenShop, orderId: string): Promise<Entry[]> {
  const rows = await shop.read
    .selectFrom('entry')
    .innerJoin('person', 'person.id', 'entry.person_id')
    .selectAll('entry')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('recorded_at', 'desc')
    .orderBy('entry.id', 'desc')
    .limit(2000)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    item: row.item,
    outcome: row.outcome,
    doneOn: row.done_on,
    personName: row.person_name,
    note: row.note,
    overrideReason: row.override_reason,
    recordedAt: row.recorded_at,
    struckReason: row.struck_reason,
  }));
}

/** @see contract.entries.record */
export function recordEntry(
  ctx: ShopContext,
  input: ContractInputs['entries']['record'],
): Promise<RecordResult> {
  const kind = entryKinds[input.item];
  return runCommand(ctx, { id: input.commandId, name: 'entries.record' }, async (trx) => {
    trx.about({ orderId: input.orderId });
    const order = await readOrder(trx.db, input.orderId);
    if (kind.retired !== null) {
      throw new ShopError('CONFLICT', `${kind.label}: ${kind.retired}`, { item: kind.retired });
    }
    if (kind.noteRequired && input.note.trim() === '') {
      throw new ShopError('BAD_INPUT', `${kind.label}: write a few words.`, { note: kind.hint });
    }
    const gates = kind.step === null ? [] : [kind.step];
    const facts = await readFacts(trx.db, order, trx.at);
    const verdict = passGates(gates, facts, ctx.actor.role, input.override);
    if (!verdict.open) return { outcome: 'refused', orderId: order.id, missing: verdict.missing };
    const overridden = verdict.overridden.length > 0;
    const row = await trx.insert('entry', {
      id: ctx.newId(),
      order_id: order.id,
      item: input.item,
      outcome: input.outcome,
      done_on: input.doneOn,
      person_id: ctx.actor.personId,
      note: input.note,
      override_reason: overridden ? (input.override?.reason ?? null) : null,
      recorded_at: trx.at,
      struck_reason: null,
    });
    const trouble = input.outcome === 'ok' ? '' : ' (not in order)';
    await note(trx, ctx, order.id, {
      kind: 'entry',
      summary: `${kind.label}${trouble}${input.note === '' ? '' : `: ${input.note}`}`,
      reason: overridden ? (input.override?.reason ?? null) : null,
    });
    return { outcome: 'recorded', ...changedOf(row) };
  });
}

export function strikeOutEntry(
  ctx: ShopContext,
  input: ContractInputs['entries']['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'entries.strikeOut' }, async (trx) => {
    const entry = await trx.db
      .selectFrom('entry')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (entry === undefined) throw notFound('entry', input.id);
    trx.about({ orderId: entry.order_id });
    if (entry.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This entry is already struck out.');
    }
    const row = await trx.update('entry', entry.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, entry.order_id, {
      kind: 'strike-out',
      summary: `Struck out: ${entryKinds[entry.item].label}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
