import type { Scale } from '../../../shared/contract/scales.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { ScaleRow } from '../../storage/tables.ts';
import { changedOf, notFound } from '../record.ts';
import { lastCheck, scaleTrouble, worstErrorLbf } from './scale-check.ts';

async function scaleOf(shop: OpenShop, row: ScaleRow): Promise<Scale> {
  const last = await lastCheck(shop.read, row.id);
  const by =
    last === null
      ? undefined
      : await shop.read
          .selectFrom('person')
          .select('name')
          .where('id', '=', last.checked_by)
          .executeTakeFirst();
  const trouble = scaleTrouble(last, shop.now());
  return {
    id: row.id,
    name: row.name,
    resolutionLbf: row.resolution_lbf,
    active: row.active === 1,
    rowVersion: row.row_version,
    lastCheck:
      last === null
        ? null
        : {
            checkedAt: last.checked_at,
            checkedBy: by?.name ?? '',
            lowLoadLbf: last.low_load_lbf,
            lowReadingLbf: last.low_reading_lbf,
            highLoadLbf: last.high_load_lbf,
            highReadingLbf: last.high_reading_lbf,
            worstErrorLbf: worstErrorLbf(last),
          },
    usable: row.active === 1 && trouble === null,
    reason: row.active === 1 ? (trouble ?? '') : 'It is out of use.',
  };
}

export async function listScales(shop: OpenShop): Promise<Scale[]> {
  const rows = await shop.read
    .selectFrom('scale')
    .selectAll()
    .orderBy('active', 'desc')
    .orderBy('name')
    .limit(100)
    .execute();
  return Promise.all(rows.map((row) => scaleOf(shop, row)));
}

export function addScale(
  ctx: ShopContext,
  input: ContractInputs['scales']['add'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'scales.add' }, async (trx) =>
    changedOf(
      await trx.insert('scale', {
        id: ctx.newId(),
        name: input.name,
        resolution_lbf: input.resolutionLbf,
        active: 1,
      }),
    ),
  );
}

export function editScale(
  ctx: ShopContext,
  input: ContractInputs['scales']['edit'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'scales.edit' }, async (trx) =>
    changedOf(
      await trx.update('scale', input.id, input.rowVersion, {
        name: input.name,
        resolution_lbf: input.resolutionLbf,
        active: input.active ? 1 : 0,
      }),
    ),
  );
}

export function checkScale(
  ctx: ShopContext,
  input: ContractInputs['scales']['check'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'scales.check' }, async (trx) => {
    const scale = await trx.db
      .selectFrom('scale')
      .select('id')
      .where('id', '=', input.scaleId)
      .executeTakeFirstOrThrow(() => notFound('scale', input.scaleId));
    const row = await trx.insert('scale_check', {
      id: ctx.newId(),
      scale_id: scale.id,
      checked_at: trx.at,
      checked_by: ctx.actor.personId,
      low_load_lbf: input.lowLoadLbf,
      low_reading_lbf: input.lowReadingLbf,
      high_load_lbf: input.highLoadLbf,
      high_reading_lbf: input.highReadingLbf,
    });
    return changedOf(row);
  });
}
