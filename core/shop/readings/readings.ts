import { takesMoisture } from '../../../shared/bow-checks.ts';
import type { Reading } from '../../../shared/contract/readings.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { bowOf } from '../bows/bow-row.ts';
import { limbSetOfBow } from '../bows/limb-sets.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { lastCheck, scaleTrouble, worstErrorLbf } from '../scales/scale-check.ts';
import { storedReadings } from './stored.ts';
import { sessionWeights } from './weights.ts';

type AddInput = ContractInputs['readings']['add'];

export async function readingsOf(shop: OpenShop, orderId: string): Promise<Reading[]> {
  const rows = await storedReadings(shop.read, [orderId]);
  const limbSetIds = rows.flatMap((row) => (row.limb_set_id === null ? [] : [row.limb_set_id]));
  const names = new Map(
    (await shop.read.selectFrom('person').select(['id', 'name']).execute()).map((row) => [
      row.id,
      row.name,
    ]),
  );
  const scales = new Map(
    (await shop.read.selectFrom('scale').select(['id', 'name']).execute()).map((row) => [
      row.id,
      row.name,
    ]),
  );
  const limbSets = new Map(
    (
      await shop.read
        .selectFrom('limb_set')
        .select(['id', 'name'])
        .where('id', 'in', limbSetIds)
        .execute()
    ).map((row) => [row.id, row.name]),
  );
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

/** Nobody draws a bow with an open stop finding, nor past what it can take. */
async function refuseUnsafeDraw(
  trx: CommandTransaction,
  order: OrderRow,
  input: AddInput,
): Promise<string> {
  if (order.bow_id === null) {
    throw new ShopError('CONFLICT', 'Identify the bow before it is weighed.', { bow: order.id });
  }
  const [stop] = stopsOf(await openStops(trx.db), order);
  if (stop !== undefined) {
    throw new ShopError(
      'CONFLICT',
      `Do not draw this bow: a stop finding is open (${stop.place}).`,
      {
        findings: 'Repair and look again first.',
      },
    );
  }
  const bow = await trx.db
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id)
    .executeTakeFirstOrThrow();
  if (input.moisturePct !== null && !takesMoisture(bowOf(bow))) {
    throw new ShopError(
      'BAD_INPUT',
      'Moisture is read on bare wood or bamboo; this bow shows none.',
      {
        moisturePct: 'Leave it empty, or correct the faces of the bow.',
      },
    );
  }
  const longest = Math.max(...input.pulls.map((pull) => pull.drawIn));
  if (bow.max_safe_draw_in !== null && longest > bow.max_safe_draw_in) {
    throw new ShopError(
      'BAD_INPUT',
      `A pull of ${longest}" is past the bow's maximum safe draw of ${bow.max_safe_draw_in}".`,
      { pulls: 'Check the draw length that was written down.' },
    );
  }
  return order.bow_id;
}

/** Limbs weigh what they weigh on one riser: which limbs and which riser is part of the weight. */
async function refuseOddLimbs(
  trx: CommandTransaction,
  order: OrderRow,
  input: AddInput,
): Promise<void> {
  if (input.limbSetId !== null) await limbSetOfBow(trx.db, input.limbSetId, order.bow_id);
  if (input.limbSetId !== order.limb_set_id) {
    throw new ShopError('BAD_INPUT', 'These are other limbs than the ones on this order.', {
      limbSetId: 'Weigh the limbs of the order, or change which limbs the order is about.',
    });
  }
  if (order.came_as === 'limbs-only' && input.riserNote === '') {
    throw new ShopError('BAD_INPUT', 'Say which riser they were weighed on.', {
      riserNote: 'Only the limbs came, and they weigh differently on every riser.',
    });
  }
}

async function checkedScaleError(trx: CommandTransaction, scaleId: string): Promise<number> {
  const scale = await trx.db
    .selectFrom('scale')
    .selectAll()
    .where('id', '=', scaleId)
    .executeTakeFirst();
  if (scale === undefined) throw notFound('scale', scaleId);
  const last = await lastCheck(trx.db, scaleId);
  const trouble = scale.active === 1 ? scaleTrouble(last, trx.at) : 'It is out of use.';
  if (trouble !== null || last === null) {
    throw new ShopError('CONFLICT', `The scale "${scale.name}" cannot be used. ${trouble}`, {
      scaleId: 'Check it with two known loads in Settings, or take another scale.',
    });
  }
  return worstErrorLbf(last);
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
      weighed_at: trx.at,
      person_id: ctx.actor.personId,
      scale_error_lbf: scaleError,
      struck_reason: null,
      limb_set_id: input.limbSetId,
      riser_note: input.riserNote,
      string_track: input.stringTrack,
      moisture_pct: input.moisturePct,
      strung_minutes: input.strungMinutes,
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
