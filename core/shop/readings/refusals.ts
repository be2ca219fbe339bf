import { takesMoisture } from '../../../shared/bow-checks.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { bowOf } from '../bows/bow-row.ts';
import { limbSetOfBow } from '../bows/limb-sets.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { notFound } from '../record.ts';
import { lastCheck, scaleTrouble, worstErrorLbf } from '../scales/scale-check.ts';

type AddInput = ContractInputs['readings']['add'];

/**
 * Nobody draws a bow with an open stop finding, nor past what it can take.
 * @returns id of the bow.
 * @throws ShopError CONFLICT or BAD_INPUT.
 */
export async function refuseUnsafeDraw(
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
export async function refuseOddLimbs(
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

/** Worst error of the scale at its last check, pound-force. @throws ShopError where it may not be used. */
export async function checkedScaleError(trx: CommandTransaction, scaleId: string): Promise<number> {
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
