import { markingTroubles } from '../../../shared/bow-checks.ts';
import type { LimbSet, LimbSetFields } from '../../../shared/contract/limb-sets.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { LimbSetRow } from '../../storage/tables.ts';
import { noteOnOpenOrders } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';
import { refuseTroubles } from './troubles.ts';

function limbSetColumns(fields: LimbSetFields) {
  return {
    name: fields.name,
    upper_serial: fields.upperSerial,
    lower_serial: fields.lowerSerial,
    amo_length_in: fields.amoLengthIn,
    marked_weight_lbf: fields.markedWeightLbf,
    marked_draw_in: fields.markedDrawIn,
    marked_draw_reference: fields.markedDrawReference,
    riser_name: fields.riserName,
    riser_length_in: fields.riserLengthIn,
    riser_pad_deg: fields.riserPadDeg,
    notes: fields.notes,
  };
}

export function limbSetOf(row: LimbSetRow): LimbSet {
  return {
    id: row.id,
    rowVersion: row.row_version,
    bowId: row.bow_id,
    createdAt: row.created_at,
    name: row.name,
    upperSerial: row.upper_serial,
    lowerSerial: row.lower_serial,
    amoLengthIn: row.amo_length_in,
    markedWeightLbf: row.marked_weight_lbf,
    markedDrawIn: row.marked_draw_in,
    markedDrawReference: row.marked_draw_reference,
    riserName: row.riser_name,
    riserLengthIn: row.riser_length_in,
    riserPadDeg: row.riser_pad_deg,
    notes: row.notes,
  };
}

/** Limb sets of a bow, in the order they were added. */
export async function limbSetsOf(shop: OpenShop, bowId: string): Promise<LimbSet[]> {
  const rows = await shop.read
    .selectFrom('limb_set')
    .selectAll()
    .where('bow_id', '=', bowId)
    .orderBy('created_at')
    .orderBy('id')
    .limit(100)
    .execute();
  return rows.map(limbSetOf);
}

/** The limb set of this id, where it belongs to this bow. @throws ShopError NOT_FOUND or CONFLICT. */
export async function limbSetOfBow(
  db: OpenShop['read'],
  id: string,
  bowId: string | null,
): Promise<LimbSetRow> {
  const row = await db.selectFrom('limb_set').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('limb set', id);
  if (row.bow_id !== bowId) {
    throw new ShopError('CONFLICT', 'These limbs belong to another bow.', {
      limbSetId: 'Choose a limb set of this bow.',
    });
  }
  return row;
}

/** Most limb sets one bow is kept with; more than any shop has met (common practice). */
const mostSets = 100;

async function refuseUnfit(trx: CommandTransaction, bowId: string): Promise<void> {
  const bow = await trx.db
    .selectFrom('bow')
    .select('take_down')
    .where('id', '=', bowId)
    .executeTakeFirst();
  if (bow === undefined) throw notFound('bow', bowId);
  if (bow.take_down === 'one-piece') {
    throw new ShopError('CONFLICT', 'A one-piece bow has no limbs that come off.', {
      bowId: 'Change the bow to a take-down first, if it is one.',
    });
  }
  const { count } = await trx.db
    .selectFrom('limb_set')
    .select((eb) => eb.fn.countAll<number>().as('count'))
    .where('bow_id', '=', bowId)
    .executeTakeFirstOrThrow();
  if (count < mostSets) return;
  throw new ShopError('CONFLICT', `This bow has ${mostSets} limb sets already.`, {
    bowId: 'Change one of them instead.',
  });
}

/** Two sets of one name could not be told apart on a work order. */
async function refuseSameName(
  trx: CommandTransaction,
  bowId: string,
  name: string,
  own: string | null,
): Promise<void> {
  const others = await trx.db
    .selectFrom('limb_set')
    .select(['id', 'name'])
    .where('bow_id', '=', bowId)
    .execute();
  const same = others.some(
    (other) => other.id !== own && other.name.toLowerCase() === name.toLowerCase(),
  );
  if (!same) return;
  throw new ShopError('CONFLICT', `This bow already has limbs named "${name}".`, {
    name: 'Give these another name.',
  });
}

export function addLimbSet(
  ctx: ShopContext,
  input: ContractInputs['limbSets']['add'],
): Promise<Changed> {
  const { commandId, bowId, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'limbSets.add' }, async (trx) => {
    trx.about({ bowId });
    refuseTroubles(markingTroubles(fields));
    await refuseUnfit(trx, bowId);
    await refuseSameName(trx, bowId, fields.name, null);
    const row = await trx.insert('limb_set', {
      id: ctx.newId(),
      bow_id: bowId,
      ...limbSetColumns(fields),
      created_at: trx.at,
    });
    const line = { kind: 'limb-set', summary: `Limb set added: ${fields.name}` };
    await noteOnOpenOrders(trx, ctx, { bowId }, line);
    return changedOf(row);
  });
}

export function editLimbSet(
  ctx: ShopContext,
  input: ContractInputs['limbSets']['edit'],
): Promise<Changed> {
  const { commandId, id, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'limbSets.edit' }, async (trx) => {
    refuseTroubles(markingTroubles(fields));
    const row = await trx.update('limb_set', id, rowVersion, limbSetColumns(fields));
    trx.about({ bowId: row.bow_id });
    await refuseSameName(trx, row.bow_id, fields.name, id);
    const line = { kind: 'limb-set', summary: `Limb set changed: ${fields.name}` };
    await noteOnOpenOrders(trx, ctx, { bowId: row.bow_id }, line);
    return changedOf(row);
  });
}
