import type { PriceService } from '../../../shared/contract/prices.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type Service, serviceLabels, services } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changedOf } from '../record.ts';

type Inputs = ContractInputs['prices'];
const mostServices = 300;

/** Lines in use first, as the owner arranged them. */
export async function listPriceServices(shop: OpenShop): Promise<PriceService[]> {
  const rows = await shop.read
    .selectFrom('price_service')
    .selectAll()
    .orderBy('active', 'desc')
    .orderBy('position')
    .orderBy('id')
    .limit(mostServices)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    name: row.name,
    service: row.service,
    priceCents: row.price_cents,
    minutes: row.minutes,
    taxable: row.taxable === 1,
    active: row.active === 1,
    position: row.position,
  }));
}

const read = (trx: CommandTransaction) =>
  trx.db.selectFrom('price_service').selectAll().orderBy('position').orderBy('id').execute();

/** Two lines of one name could not be told apart on an estimate. */
async function refuseTaken(trx: CommandTransaction, name: string, except: string | null) {
  const taken = (await read(trx)).some((row) => row.name === name && row.id !== except);
  if (!taken) return;
  throw new ShopError('CONFLICT', `There is already a line named ${name}.`, {
    name: 'Choose another name, or change that one.',
  });
}

const fieldColumns = (
  fields: Pick<Inputs['addService'], 'name' | 'service' | 'priceCents' | 'minutes' | 'taxable'>,
) => ({
  name: fields.name,
  service: fields.service,
  price_cents: fields.priceCents,
  minutes: fields.minutes,
  taxable: fields.taxable ? (1 as const) : (0 as const),
});

async function appendService(
  trx: CommandTransaction,
  id: string,
  fields: Parameters<typeof fieldColumns>[0],
) {
  const all = await read(trx);
  if (all.length >= mostServices) {
    throw new ShopError('CONFLICT', `The list takes at most ${mostServices} lines.`);
  }
  const position = 1 + Math.max(0, ...all.map((row) => row.position));
  return trx.insert('price_service', { id, ...fieldColumns(fields), active: 1, position });
}

/** @see contract.prices.addService */
export function addPriceService(ctx: ShopContext, input: Inputs['addService']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.addService' }, async (trx) => {
    await refuseTaken(trx, input.name, null);
    return changedOf(await appendService(trx, ctx.newId(), input));
  });
}

/** Orders keep the price they were given. @see contract.prices.editService */
export function editPriceService(ctx: ShopContext, input: Inputs['editService']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.editService' }, async (trx) => {
    await refuseTaken(trx, input.name, input.id);
    return changedOf(
      await trx.update('price_service', input.id, input.rowVersion, {
        ...fieldColumns(input),
        active: input.active ? 1 : 0,
      }),
    );
  });
}

/** @see contract.prices.arrangeServices */
export function arrangePriceServices(
  ctx: ShopContext,
  input: Inputs['arrangeServices'],
): Promise<ContractOutputs['prices']['arrangeServices']> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.arrangeServices' }, async (trx) => {
    const all = await read(trx);
    const wanted = new Set(input.ids);
    if (wanted.size !== input.ids.length || wanted.size !== all.length) {
      throw new ShopError('CONFLICT', 'The list changed in the meantime. Look again.');
    }
    let moved = 0;
    for (const row of all) {
      const position = input.ids.indexOf(row.id) + 1;
      if (position === 0) {
        throw new ShopError('CONFLICT', 'The list changed in the meantime. Look again.');
      }
      if (position === row.position) continue;
      await trx.update('price_service', row.id, null, { position });
      moved += 1;
    }
    return { moved };
  });
}

/** The line a service usually needs, without a price: only the shop knows its own. */
const typical = (service: Service) => ({
  name: serviceLabels[service],
  service,
  priceCents: 0,
  minutes: 0,
  taxable: true,
});

/** @see contract.prices.addTypical */
export function addTypicalServices(
  ctx: ShopContext,
  input: Inputs['addTypical'],
): Promise<ContractOutputs['prices']['addTypical']> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.addTypical' }, async (trx) => {
    const all = await read(trx);
    const covered = new Set(all.map((row) => row.service));
    const names = new Set(all.map((row) => row.name));
    const missing = services.map(typical).filter((each) => {
      return !covered.has(each.service) && !names.has(each.name);
    });
    for (const each of missing) await appendService(trx, ctx.newId(), each);
    return { added: missing.length };
  });
}
