import type { FinishSystem } from '../../../shared/contract/finish.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import { refuseOddSheet, sheetTroubles } from '../../finish/sheet-troubles.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changedOf, notFound } from '../record.ts';
import { namedSystems, readSystem, systemOf } from './system-row.ts';

type Fields = Omit<ContractInputs['finish']['addSystem'], 'commandId'>;

/** @see contract.finish.systems */
export async function listFinishSystems(
  shop: OpenShop,
  input: ContractInputs['finish']['systems'],
): Promise<FinishSystem[]> {
  const rows = await namedSystems(shop.read)
    .$if(!input.includeInactive, (query) => query.where('finish_system.active', '=', 1))
    .orderBy('finish_system.active', 'desc')
    .orderBy('finish_system.name')
    .orderBy('finish_system.id')
    .limit(200)
    .execute();
  return rows.map(systemOf);
}

/** @see contract.finish.checkSheet */
export function checkFinishSheet(
  input: ContractInputs['finish']['checkSheet'],
): ContractOutputs['finish']['checkSheet'] {
  return sheetTroubles(input.sheet);
}

async function refuseTakenName(trx: CommandTransaction, name: string, except: string | null) {
  const taken = await trx.db
    .selectFrom('finish_system')
    .select('id')
    .where('name', '=', name)
    .where('id', '!=', except ?? '')
    .executeTakeFirst();
  if (taken === undefined) return;
  throw new ShopError('CONFLICT', `There is already a finish named ${name}.`, {
    name: 'Choose another name, or change that one.',
  });
}

/** What a system is issued from must be in the stores, and be counted by volume or weight. */
async function refuseOddStock(trx: CommandTransaction, fields: Fields): Promise<void> {
  const named = [
    ['resinId', fields.resinId],
    ['hardenerId', fields.hardenerId],
    ['thinnerId', fields.thinnerId],
  ] as const;
  for (const [field, id] of named) {
    if (id === null) continue;
    const found = await trx.db
      .selectFrom('consumable')
      .select(['name', 'unit'])
      .where('id', '=', id)
      .executeTakeFirst();
    if (found === undefined) throw notFound('consumable', id);
    if (fields.sheet.kind !== 'two-part' || ['mL', 'fl oz', 'g'].includes(found.unit)) continue;
    throw new ShopError(
      'BAD_INPUT',
      `${found.name} is counted by the ${found.unit}: a mix is issued in mL, fl oz or g.`,
      { [field]: 'Choose something that is counted by volume or weight.' },
    );
  }
}

function columnsOf(fields: Fields) {
  const sheet: FinishSheet = fields.sheet;
  return {
    name: sheet.name,
    kind: sheet.kind,
    sheet_json: JSON.stringify(sheet),
    resin_id: fields.resinId,
    hardener_id: fields.hardenerId,
    thinner_id: fields.thinnerId,
    active: fields.active ? (1 as const) : (0 as const),
  };
}

/** @see contract.finish.addSystem */
export function addFinishSystem(
  ctx: ShopContext,
  input: ContractInputs['finish']['addSystem'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.addSystem' }, async (trx) => {
    await refuseOddStock(trx, input);
    refuseOddSheet(input.sheet);
    await refuseTakenName(trx, input.sheet.name, null);
    return changedOf(await trx.insert('finish_system', { id: ctx.newId(), ...columnsOf(input) }));
  });
}

/** @see contract.finish.editSystem */
export function editFinishSystem(
  ctx: ShopContext,
  input: ContractInputs['finish']['editSystem'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.editSystem' }, async (trx) => {
    await readSystem(trx.db, input.id);
    await refuseOddStock(trx, input);
    refuseOddSheet(input.sheet);
    await refuseTakenName(trx, input.sheet.name, input.id);
    const row = await trx.update('finish_system', input.id, input.rowVersion, columnsOf(input));
    return changedOf(row);
  });
}
