import type { Reading } from '../../../shared/contract/readings.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { ReadingRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { checkedScaleError, refuseOddLimbs, refuseUnsafeDraw } from './refusals.ts';
import { storedReadings } from './stored.ts';
import { sessionWeights } from './weights.ts';

type AddInput = ContractInputs['readings']['add'];
type MeasuredColumns = Omit<
  ReadingRow,
  | 'id'
  | 'row_version'
  | 'order_id'
  | 'bow_id'
  | 'weighed_at'
  | 'person_id'
  | 'scale_error_lbf'
  | 'struck_reason'
>;

/** Names by id: of all, or of the ids given. */
async function namesIn(
  shop: OpenShop,
  table: 'person' | 'scale' | 'limb_set',
  ids?: readonly string[],
): Promise<Map<string, string>> {
  const rows = await shop.read
    .selectFrom(table)
    .select(['id', 'name'])
    .$if(ids !== undefined, (query) => query.where('id', 'in', ids ?? []))
    .execute();
  return new Map(rows.map((row) => [row.id, row.name]));
}

/** Weighings of an order, oldest first, as its page and its papers show them. */
export async function readingsOf(shop: OpenShop, orderId: string): Promise<Reading[]> {
  const rows = await storedReadings(shop.read, [orderId]);
  const limbSetIds = rows.flatMap((row) => (row.limb_set_id === null ? [] : [row.limb_set_id]));
  const names = await namesIn(shop, 'person');
  const scales = await namesIn(shop, 'scale');
  const limbSets = await namesIn(shop, 'limb_set', limbSetIds);
  return rows.slice(-500).map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    phase: row.phase,
    drawReference: row.draw_reference,
    scaleId: row.scale_id,
    scaleName: scales.get(row.scale_id) ?? '',
    scaleErrorLbf: row.scale_error_lbf,
    rigZeroLbf: row.rig_zero_lbf,
    braceIn: row.brace_in,
    stringNote: row.string_note,
    supportPoint: row.support_point,
    pullPoint: row.pull_point,
    stringTrack: row.string_track,
    limbSetId: row.limb_set_id,
    limbSetName: limbSets.get(row.limb_set_id ?? '') ?? null,
    riserNote: row.riser_note,
    moisturePct: row.moisture_pct,
    strungMinutes: row.strung_minutes,
    tillerIn: row.tiller_in,
    temperatureF: row.temperature_f,
    flexedFirst: row.flexed_first === 1,
    note: row.note,
    weighedAt: row.weighed_at,
    personName: names.get(row.person_id) ?? '',
    struckReason: row.struck_reason,
    pulls: row.pulls.map((pull, position) => ({ ...pull, dropped: position === 0 })),
    weights: sessionWeights(row.pulls, row.draw_reference),
  }));
}

/** What somebody measured and wrote down, without what the program adds. */
function readingColumns(input: AddInput): MeasuredColumns {
  return {
    phase: input.phase,
    draw_reference: input.drawReference,
    scale_id: input.scaleId,
    rig_zero_lbf: input.rigZeroLbf,
    brace_in: input.braceIn,
    string_note: input.stringNote,
    support_point: input.supportPoint,
    pull_point: input.pullPoint,
    tiller_in: input.tillerIn,
    temperature_f: input.temperatureF,
    flexed_first: input.flexedFirst ? 1 : 0,
    note: input.note,
    limb_set_id: input.limbSetId,
    riser_note: input.riserNote,
    string_track: input.stringTrack,
    moisture_pct: input.moisturePct,
    strung_minutes: input.strungMinutes,
  };
}

export function addReading(ctx: ShopContext, input: AddInput): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'readings.add' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    const bowId = await refuseUnsafeDraw(trx, order, input);
    trx.about({ orderId: order.id, bowId });
    await refuseOddLimbs(trx, order, input);
    const scaleError = await checkedScaleError(trx, input.scaleId);
    const row = await trx.insert('reading', {
      id: ctx.newId(),
      order_id: order.id,
      bow_id: bowId,
      ...readingColumns(input),
      weighed_at: trx.at,
      person_id: ctx.actor.personId,
      scale_error_lbf: scaleError,
      struck_reason: null,
    });
    for (const [position, pull] of input.pulls.entries()) {
      await trx.insert('reading_pull', {
        id: ctx.newId(),
        reading_id: row.id,
        position,
        draw_in: pull.drawIn,
        force_lbf: pull.forceLbf,
      });
    }
    const pulls = input.pulls.map((pull) => ({
      drawIn: pull.drawIn,
      forceLbf: pull.forceLbf - input.rigZeroLbf,
    }));
    const texts = sessionWeights(pulls, input.drawReference).map((weight) => weight.text);
    await note(trx, ctx, order.id, {
      kind: 'reading',
      summary: `Weighed (${input.phase}): ${texts.join(', ')}`.slice(0, 1000),
    });
    return changedOf(row);
  });
}

export function strikeOutReading(
  ctx: ShopContext,
  input: ContractInputs['readings']['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'readings.strikeOut' }, async (trx) => {
    const reading = await trx.db
      .selectFrom('reading')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (reading === undefined) throw notFound('reading', input.id);
    trx.about({ orderId: reading.order_id, bowId: reading.bow_id });
    if (reading.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This weighing is already struck out.');
    }
    const row = await trx.update('reading', reading.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, reading.order_id, {
      kind: 'strike-out',
      summary: 'Weighing struck out',
      reason: input.reason,
    });
    return changedOf(row);
  });
}
