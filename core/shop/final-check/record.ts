import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { ChecklistRow } from '../../../shared/final-checklist.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { writeFinding } from '../findings/write-finding.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { checklistOf } from './checklist.ts';
import { finalWeighingMissing } from './final-weighing.ts';

type Check = ContractInputs['finalCheck']['record']['checks'][number];

async function refuseUntimely(trx: CommandTransaction, order: OrderRow): Promise<void> {
  if (stopsOf(await openStops(trx.db), order).length > 0) {
    throw new ShopError(
      'CONFLICT',
      'A stop finding is open: do not string, flex or draw the bow. Repair it and look again first.',
    );
  }
  if (order.stage !== 'final-check' && order.stage !== 'packed') {
    throw new ShopError(
      'CONFLICT',
      'Move the order to Final check first: before that the finish may not bear stringing.',
    );
  }
}

function refuseOddCheck(check: Check, row: ChecklistRow | undefined): void {
  if (row === undefined) {
    throw new ShopError(
      'BAD_INPUT',
      'One of these checks does not apply to this bow. Look again.',
      {
        [check.item]: 'Not on the checklist of this bow.',
      },
    );
  }
  if (check.outcome === 'not-ok' && check.note.trim() === '') {
    throw new ShopError('BAD_INPUT', `${row.label}: say what is not in order.`, {
      [check.item]: 'Say what is not in order.',
    });
  }
  if (check.outcome === 'ok' && check.finding !== null) {
    throw new ShopError('BAD_INPUT', `${row.label}: what is in order needs no finding.`, {
      [check.item]: 'Mark it as not in order, or leave the finding out.',
    });
  }
}

function refuseRepeated(checks: readonly Check[]): void {
  if (new Set(checks.map((check) => check.item)).size === checks.length) return;
  throw new ShopError('BAD_INPUT', 'A check is ticked twice. Record each once.');
}

function summaryOf(checks: readonly { check: Check; label: string }[]): string {
  const troubles = checks.filter(({ check }) => check.outcome === 'not-ok');
  const good = checks.length - troubles.length;
  return [
    `Final check: ${good} in order`,
    ...troubles.map(({ check, label }) => `not in order: ${label} (${check.note.trim()})`),
  ].join('; ');
}

async function refuseUnweighed(trx: CommandTransaction, order: OrderRow, checks: readonly Check[]) {
  const weighed = checks.some((check) => check.item === 'check-weighed' && check.outcome === 'ok');
  if (!weighed || !(await finalWeighingMissing(trx.db, order.id))) return;
  throw new ShopError('CONFLICT', 'Weigh it first: there is no final weighing yet.', {
    'check-weighed': 'Record a final weighing, then tick this.',
  });
}

async function writeChecks(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: ContractInputs['finalCheck']['record'],
): Promise<void> {
  for (const check of input.checks) {
    await trx.insert('entry', {
      id: ctx.newId(),
      order_id: input.orderId,
      item: check.item,
      outcome: check.outcome,
      done_on: input.doneOn,
      person_id: ctx.actor.personId,
      note: check.note,
      override_reason: null,
      recorded_at: trx.at,
      struck_reason: null,
    });
  }
}

/** @see contract.finalCheck.record */
export function recordFinalCheck(
  ctx: ShopContext,
  input: ContractInputs['finalCheck']['record'],
): Promise<Changed> {
  const { checks } = input;
  return runCommand(ctx, { id: input.commandId, name: 'finalCheck.record' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    await refuseUntimely(trx, order);
    refuseRepeated(checks);
    const checklist = new Map((await checklistOf(trx.db, order)).map((row) => [row.item, row]));
    for (const check of checks) refuseOddCheck(check, checklist.get(check.item));
    await refuseUnweighed(trx, order, checks);
    await writeChecks(trx, ctx, input);
    await note(trx, ctx, order.id, {
      kind: 'final-check',
      summary: summaryOf(
        checks.map((check) => ({ check, label: checklist.get(check.item)?.label ?? '' })),
      ),
    });
    for (const { finding, note: words } of checks) {
      if (finding !== null) await writeFinding(trx, ctx, order, { ...finding, note: words });
    }
    return changedOf(await readOrder(trx.db, order.id));
  });
}
