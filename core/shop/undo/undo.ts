import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import {
  type CommandTransaction,
  type Patch,
  type RecordTable,
  runCommand,
} from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { notFound } from '../record.ts';
import { type Done, isTouch, type RowWrite, readDone } from './done.ts';
import { refuseAfter, refuseBefore } from './safe.ts';
import { tellUndone } from './tell-undone.ts';
import { undoTrouble } from './trouble.ts';
import { whatOf } from './words.ts';

type Columns = Record<string, string | number | null>;

/** The row as it was, to the last column. Its version still grows, so that older views are told. */
async function putBack(trx: CommandTransaction, write: RowWrite): Promise<void> {
  const { id: _, row_version: __, ...columns } = (write.before ?? {}) as Columns;
  const patch = isTouch(write) ? {} : (columns as Patch<RecordTable>);
  await trx.update(write.table, write.id, null, patch);
}

/** Changed rows first: what was added may be referred to until then. */
async function putAllBack(trx: CommandTransaction, done: Done): Promise<void> {
  const latestFirst = done.writes.toReversed();
  for (const write of latestFirst) if (write.before !== null) await putBack(trx, write);
  for (const write of latestFirst) {
    if (write.before === null) await trx.remove(write.table, write.id, null);
  }
}

/** A stop that stands again must be seen by whoever is about to move the order on an older view. */
async function callAttention(trx: CommandTransaction, done: Done): Promise<void> {
  const orders = new Set(
    done.writes
      .filter(({ table, before }) => table === 'finding' && before?.grade === 'stop')
      .map(({ before }) => String(before?.order_id)),
  );
  for (const id of orders) await trx.update('shop_order', id, null, {});
}

const isConstraint = (error: unknown) =>
  error instanceof Error && 'code' in error && /^SQLITE_CONSTRAINT/.test(String(error.code));

/**
 * Refusals that belong to a form speak of its fields; here they are about what stands now. What
 * the storage itself refuses is a row that refers to one which was taken out since.
 */
async function asConflict(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (isConstraint(error)) {
      const sentence = 'What this would put back refers to something that is no longer there.';
      throw new ShopError('CONFLICT', sentence, {}, error);
    }
    if (!(error instanceof ShopError) || error.code !== 'BAD_INPUT') throw error;
    throw new ShopError('CONFLICT', error.message, error.details, error);
  }
}

/** @see contract.undo.undo */
export function undoCommand(
  ctx: ShopContext,
  input: ContractInputs['undo']['undo'],
): Promise<ContractOutputs['undo']['undo']> {
  const command = { id: input.commandId, name: 'undo.undo', undoes: input.of };
  return runCommand(ctx, command, async (trx) => {
    const done = await readDone(trx.db, input.of);
    if (done === null) throw notFound('change', input.of);
    const { orderId, bowId, customerId } = done;
    trx.about({ orderId, bowId, customerId });
    const trouble = await undoTrouble(trx.db, ctx.actor, done);
    if (trouble !== null) throw trouble;
    await asConflict(async () => {
      await refuseBefore(trx, ctx, done);
      await putAllBack(trx, done);
      await refuseAfter(trx, ctx, done);
    });
    await callAttention(trx, done);
    await tellUndone(trx, ctx, done);
    return { of: done.id, orderId, what: whatOf(done) };
  });
}
