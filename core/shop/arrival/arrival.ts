import { arrivalMissing } from '../../../shared/arrival.ts';
import type { ArrivalFields } from '../../../shared/contract/arrival.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ArrivalRow, OrderRow } from '../../storage/tables.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { arrivalColumns, arrivalFieldsOf, arrivalRowOf } from './arrival-row.ts';
import { countBelongings } from './belongings.ts';

type Inputs = ContractInputs['arrival'];

/** The first record of an unpacking table, for a command that writes more than this. */
export async function insertArrival(
  trx: CommandTransaction,
  ctx: ShopContext,
  orderId: string,
  fields: ArrivalFields,
): Promise<ArrivalRow> {
  return trx.insert('arrival', {
    id: ctx.newId(),
    order_id: orderId,
    ...arrivalColumns(fields),
    person_id: ctx.actor.personId,
    completed_at: null,
    completed_by: null,
  });
}

/** A bow with an open stop finding is not strung; one that was strung before it was found stays so. */
async function refuseStringing(
  trx: CommandTransaction,
  order: OrderRow,
  before: ArrivalRow | undefined,
  fields: ArrivalFields,
): Promise<void> {
  if (fields.strung !== 'strung' || before?.strung === 'strung') return;
  const [stop] = stopsOf(await openStops(trx.db), order);
  if (stop === undefined) return;
  throw new ShopError('CONFLICT', `Do not string it: a stop finding is open (${stop.place}).`, {
    strung: 'Say why it is not strung.',
  });
}

async function refuseNothingBeside(
  trx: CommandTransaction,
  orderId: string,
  fields: ArrivalFields,
): Promise<void> {
  if (!fields.nothingCameAlong || (await countBelongings(trx.db, orderId)) === 0) return;
  throw new ShopError('CONFLICT', 'Something is on the list of what came along.', {
    nothingCameAlong: 'Correct the list instead.',
  });
}

function staleVersion(order: OrderRow): ShopError {
  return new ShopError(
    'STALE',
    `Somebody wrote at the unpacking table of order ${order.number} in the meantime. Look again, then repeat.`,
    { arrival: order.id },
  );
}

/** Everything but the note: a changed note leaves a completed check complete. */
const partsOf = (fields: ArrivalFields) => JSON.stringify({ ...fields, note: '' });

async function writeArrival(
  trx: CommandTransaction,
  ctx: ShopContext,
  before: ArrivalRow,
  fields: ArrivalFields,
): Promise<ArrivalRow> {
  const reopens =
    before.completed_at !== null && partsOf(arrivalFieldsOf(before)) !== partsOf(fields);
  const row = await trx.update('arrival', before.id, before.row_version, {
    ...arrivalColumns(fields),
    person_id: ctx.actor.personId,
    ...(reopens ? { completed_at: null, completed_by: null } : {}),
  });
  await note(trx, ctx, before.order_id, {
    kind: 'arrival',
    summary: reopens
      ? 'Arrival record changed; the check is open again'
      : changeText(arrivalFieldsOf(before), fields),
  });
  return row;
}

const strungWords = {
  'not-yet': 'not strung yet',
  strung: 'strung',
  'not-strung': 'not strung',
} as const;

/** What a line of history says of a changed record: the steps that matter later, by name. */
function changeText(before: ArrivalFields, after: ArrivalFields): string {
  const steps = [
    before.condition !== after.condition ? `condition: ${after.condition}` : '',
    before.restingSince === null && after.restingSince !== null ? 'out of the box to rest' : '',
    !before.lookedOver && after.lookedOver ? 'looked over' : '',
    before.strung !== after.strung ? strungWords[after.strung] : '',
    before.notStrungBecause !== after.notStrungBecause && after.notStrungBecause !== ''
      ? `because ${after.notStrungBecause}`
      : '',
  ].filter((step) => step !== '');
  return steps.length === 0 ? 'Arrival record changed' : `Arrival: ${steps.join(', ')}`;
}

/** @see contract.arrival.record */
export function recordArrival(ctx: ShopContext, input: Inputs['record']): Promise<Changed> {
  const { commandId, orderId, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'arrival.record' }, async (trx) => {
    trx.about({ orderId });
    const order = await readOrder(trx.db, orderId);
    trx.about({ bowId: order.bow_id });
    const before = await arrivalRowOf(trx.db, orderId);
    if ((before?.row_version ?? null) !== rowVersion) throw staleVersion(order);
    await refuseStringing(trx, order, before, fields);
    await refuseNothingBeside(trx, orderId, fields);
    if (before !== undefined) return changedOf(await writeArrival(trx, ctx, before, fields));
    const row = await insertArrival(trx, ctx, orderId, fields);
    await note(trx, ctx, orderId, { kind: 'arrival', summary: `Box opened ${fields.openedOn}` });
    return changedOf(row);
  });
}

/** @see contract.arrival.complete */
export function completeArrival(
  ctx: ShopContext,
  input: Inputs['complete'],
): Promise<ContractOutputs['arrival']['complete']> {
  return runCommand(ctx, { id: input.commandId, name: 'arrival.complete' }, async (trx) => {
    trx.about({ orderId: input.orderId });
    const order = await readOrder(trx.db, input.orderId);
    const row = await arrivalRowOf(trx.db, order.id);
    if (row !== undefined && row.row_version !== input.rowVersion) throw staleVersion(order);
    const belongings = await countBelongings(trx.db, order.id);
    const missing = arrivalMissing(row === undefined ? null : arrivalFieldsOf(row), belongings);
    if (row === undefined || missing.length > 0) return { outcome: 'incomplete', missing };
    if (row.completed_at !== null) return { outcome: 'completed', ...changedOf(row) };
    const done = await trx.update('arrival', row.id, row.row_version, {
      completed_at: trx.at,
      completed_by: ctx.actor.personId,
    });
    await note(trx, ctx, order.id, {
      kind: 'arrival',
      summary:
        row.strung === 'strung'
          ? 'Arrival check complete'
          : `Arrival check complete, not strung because ${row.not_strung_because}`,
    });
    return { outcome: 'completed', ...changedOf(done) };
  });
}
