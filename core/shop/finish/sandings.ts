import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type BowSection, bowSectionLabels } from '../../../shared/finish.ts';
import { gritText } from '../../../shared/grit.ts';
import { abrasive } from '../../finish/grit.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { bowIdOf, refuseLeft } from './choose.ts';
import { doneAt } from './done-at.ts';
import { gritOfRow, lastGritsOf } from './last-grits.ts';
import { storedFinishOf } from './stored.ts';
import { sheetOf } from './system-row.ts';

type Input = ContractInputs['finish']['recordSanding'];

async function writeParts(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  input: Input,
): Promise<Changed[]> {
  const at = doneAt(input.at, trx.at);
  const recorded: Changed[] = [];
  for (const { section, substrate } of input.parts) {
    const row = await trx.insert('sanding', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: bowIdOf(order),
      section,
      substrate,
      grit_json: JSON.stringify(input.grit),
      strokes: input.strokes,
      wiped: input.wiped ? 1 : 0,
      is_last: input.isLast ? 1 : 0,
      note: input.note,
      at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    recorded.push(changedOf(row));
  }
  return recorded;
}

const sectionsText = (parts: Input['parts']) =>
  [...new Set(parts.map(({ section }) => bowSectionLabels[section].toLowerCase()))].join(', ');

/** @see contract.finish.recordSanding */
export function recordGrit(
  ctx: ShopContext,
  input: Input,
): Promise<ContractOutputs['finish']['recordSanding']> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.recordSanding' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    refuseLeft(order);
    abrasive(input.grit);
    if (new Set(input.parts.map((each) => JSON.stringify(each))).size < input.parts.length) {
      throw new ShopError('BAD_INPUT', 'A part is named twice. Name each once.', {
        parts: 'Name each part once.',
      });
    }
    const recorded = await writeParts(trx, ctx, order, input);
    const last = input.isLast ? ', the last grit' : '';
    await note(trx, ctx, order.id, {
      kind: 'sanding',
      summary: `Sanded ${gritText(input.grit)}${last}: ${sectionsText(input.parts)}`,
    });
    const rows = await storedFinishOf(trx.db, order.id);
    const sheet = rows.chosen === null ? null : sheetOf(rows.chosen);
    const touched = new Set<BowSection>(input.parts.map(({ section }) => section));
    const advice = lastGritsOf(rows.sandings, sheet)
      .filter(({ section }) => touched.has(section))
      .flatMap(({ section, advice: each }) =>
        each.map((sentence) => `${bowSectionLabels[section]}: ${sentence}`),
      );
    return { recorded, advice: [...new Set(advice)].slice(0, 60) };
  });
}

/** @see contract.finish.strikeOutSanding */
export function strikeOutGrit(
  ctx: ShopContext,
  input: ContractInputs['finish']['strikeOutSanding'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.strikeOutSanding' }, async (trx) => {
    const found = await trx.db
      .selectFrom('sanding')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (found === undefined) throw notFound('sanding', input.id);
    trx.about({ orderId: found.order_id, bowId: found.bow_id });
    if (found.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This sanding is already struck out.');
    }
    const patch = { struck_reason: input.reason };
    const row = await trx.update('sanding', found.id, input.rowVersion, patch);
    const where = bowSectionLabels[found.section as BowSection].toLowerCase();
    await note(trx, ctx, found.order_id, {
      kind: 'strike-out',
      summary: `Struck out: sanding ${gritText(gritOfRow(found))}, ${where}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
