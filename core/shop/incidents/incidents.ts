import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { incidentLabels, isDamage } from '../../../shared/incidents.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { IncidentRow, OrderRow } from '../../storage/tables.ts';
import { addDays, dayOf } from '../day.ts';
import { writeFinding } from '../findings/write-finding.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { claimOf } from './claim-days.ts';

type Inputs = ContractInputs['incidents'];

/** A day of grace, so that no time zone gets in the way of an honest date. */
function refuseFuture(field: string, on: string | null, at: string): void {
  if (on === null || on <= addDays(dayOf(at), 1)) return;
  throw new ShopError('BAD_INPUT', 'This day has not come yet.', { [field]: 'Give a past day.' });
}

/** The stop that damage makes, so that nobody draws the bow before it is repaired and looked at. */
async function stopFor(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  input: Inputs['record'],
): Promise<string | null> {
  if (!isDamage(input.kind)) return null;
  if (input.place === '') {
    throw new ShopError('BAD_INPUT', 'Say where on the bow the damage is.', {
      place: 'Say where on the bow.',
    });
  }
  const finding = await writeFinding(trx, ctx, order, {
    grade: 'stop',
    place: input.place,
    note: input.what.slice(0, 1000),
  });
  return finding.id;
}

/** @see contract.incidents.record */
export function recordIncident(ctx: ShopContext, input: Inputs['record']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'incidents.record' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    refuseFuture('happenedOn', input.happenedOn, trx.at);
    const claim = await claimOf(trx.db, order, input);
    const row = await trx.insert('incident', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: order.bow_id,
      kind: input.kind,
      happened_on: input.happenedOn,
      what: input.what,
      finding_id: await stopFor(trx, ctx, order, input),
      found_at: trx.at,
      found_by: ctx.actor.personId,
      claim_with: input.claimWith === '' ? (claim?.claimWith ?? '') : input.claimWith,
      claim_until: input.claimUntil ?? claim?.claimUntil ?? null,
      claim_filed_on: null,
      claim_number: '',
      owner_told_on: null,
      owner_told_how: '',
      remedy: '',
      settled_at: null,
      settled_how: '',
    });
    await note(trx, ctx, order.id, {
      kind: 'incident',
      summary: `${incidentLabels[input.kind]}: ${input.what}`,
    });
    return changedOf(row);
  });
}

/** @throws ShopError NOT_FOUND, STALE, or CONFLICT where it is settled and stays as it ended. */
async function openIncident(
  trx: CommandTransaction,
  input: { id: string; rowVersion: number },
): Promise<IncidentRow> {
  const incident = await trx.db
    .selectFrom('incident')
    .selectAll()
    .where('id', '=', input.id)
    .executeTakeFirst();
  if (incident === undefined) throw notFound('incident', input.id);
  trx.about({ orderId: incident.order_id, bowId: incident.bow_id });
  if (incident.settled_at !== null) {
    throw new ShopError('CONFLICT', 'This is already settled. Record a new incident if need be.');
  }
  return incident;
}

/** @see contract.incidents.edit */
export function editIncident(ctx: ShopContext, input: Inputs['edit']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'incidents.edit' }, async (trx) => {
    const incident = await openIncident(trx, input);
    refuseFuture('ownerToldOn', input.ownerToldOn, trx.at);
    refuseFuture('claimFiledOn', input.claimFiledOn, trx.at);
    const row = await trx.update('incident', incident.id, input.rowVersion, {
      what: input.what,
      claim_with: input.claimWith,
      claim_until: input.claimUntil,
      claim_filed_on: input.claimFiledOn,
      claim_number: input.claimNumber,
      owner_told_on: input.ownerToldOn,
      owner_told_how: input.ownerToldHow,
      remedy: input.remedy,
    });
    await note(trx, ctx, incident.order_id, {
      kind: 'incident',
      summary: `${incidentLabels[incident.kind]}: ${newsIn(incident, row)}`,
    });
    return changedOf(row);
  });
}

/** What a change adds to the story of an incident, in words. */
function newsIn(before: IncidentRow, after: IncidentRow): string {
  const news = [
    after.owner_told_on !== before.owner_told_on && after.owner_told_on !== null
      ? `customer told ${after.owner_told_on} ${after.owner_told_how}`.trim()
      : '',
    after.remedy !== before.remedy && after.remedy !== '' ? `remedy: ${after.remedy}` : '',
    after.claim_filed_on !== before.claim_filed_on && after.claim_filed_on !== null
      ? `claim filed ${after.claim_filed_on}`
      : '',
  ].filter((part) => part !== '');
  return news.length === 0 ? 'changed' : news.join('; ');
}

/** @see contract.incidents.settle */
export function settleIncident(ctx: ShopContext, input: Inputs['settle']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'incidents.settle' }, async (trx) => {
    const incident = await openIncident(trx, input);
    const order = await readOrder(trx.db, incident.order_id);
    refuseUnsettled(incident, order);
    const row = await trx.update('incident', incident.id, input.rowVersion, {
      settled_at: trx.at,
      settled_how: input.how,
    });
    await note(trx, ctx, order.id, {
      kind: 'incident',
      summary: `Settled: ${incidentLabels[incident.kind].toLowerCase()}`,
      reason: input.how,
    });
    return changedOf(row);
  });
}

function refuseUnsettled(incident: IncidentRow, order: OrderRow): void {
  const trouble: Record<string, string> = {};
  if (incident.owner_told_on === null && order.customer_id !== null) {
    trouble.ownerToldOn = 'The customer has not been told yet: say when and how.';
  }
  if (incident.remedy.trim() === '') trouble.remedy = 'No remedy is agreed yet: write it down.';
  const sentences = Object.values(trouble);
  if (sentences.length > 0) throw new ShopError('CONFLICT', sentences.join(' '), trouble);
}
