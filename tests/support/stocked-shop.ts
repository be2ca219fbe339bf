import { addConsumable } from '../../core/shop/stores/consumables.ts';
import { receiveLots } from '../../core/shop/stores/receive.ts';
import type { ShopContext } from '../../core/storage/context.ts';
import { blankConsumable } from '../../shared/contract/stores.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import { newCommandId } from './new-command-id.ts';

type Consumable = Omit<ContractInputs['stores']['addConsumable'], 'commandId'>;
type Received = Omit<ContractInputs['stores']['receive'], 'commandId' | 'consumableId'>;

export const consumableFields: Consumable = {
  ...blankConsumable,
  name: 'Clear finish, resin',
  category: 'finish',
  unit: 'mL',
  shelf: 'Cabinet 1',
  runOutPercent: null,
};

export const receivedFields: Received = {
  number: 'R-118',
  receivedOn: '2026-03-01',
  expiresOn: '2026-09-30',
  costCents: null,
  note: '',
  containers: 1,
  quantity: 946,
  unit: 'mL',
};

/** A consumable as filled in, with the given changes. */
export async function stocked(
  ctx: ShopContext,
  change: Partial<Consumable> = {},
): Promise<{ id: string; rowVersion: number }> {
  return addConsumable(ctx, { commandId: newCommandId(), ...consumableFields, ...change });
}

/** The first lot of what was received. */
export async function received(
  ctx: ShopContext,
  consumableId: string,
  change: Partial<Received> = {},
): Promise<string> {
  const given = { commandId: newCommandId(), consumableId, ...receivedFields, ...change };
  const { lotIds } = await receiveLots(ctx, given);
  const [first] = lotIds;
  if (first === undefined) throw new Error('nothing was received');
  return first;
}
