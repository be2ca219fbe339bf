import { Core } from '../../core/host/core.ts';
import { addPerson } from '../../core/shop/setup/people.ts';
import { openShop } from '../../core/shop/setup/shop.ts';
import type { ShopContext } from '../../core/storage/context.ts';
import type { Role } from '../../shared/people.ts';
import { layBlankShop } from './blank-shop.ts';
import { TestClock } from './clock.ts';
import { shopFields } from './fixtures.ts';
import { newCommandId } from './new-command-id.ts';

export interface TestShop {
  core: Core;
  clock: TestClock;
  folder: string;
  owner: ShopContext;
  as(role: Role): ShopContext;
}

/** A real shop in the given folder: an owner, an office hand, a bench hand. */
export async function furnishShop(folder: string): Promise<TestShop> {
  await layBlankShop(folder);
  const clock = new TestClock();
  const core = new Core({ dataFolder: folder, now: clock.now });
  const state = await core.settled();
  if (state.phase !== 'ready') throw new Error(`the shop did not open: ${JSON.stringify(state)}`);
  const shop = core.shop();
  const { personId } = await openShop(shop, 'test', {
    commandId: newCommandId(),
    shop: shopFields,
    owner: { name: 'Ida Penn', initials: 'IP' },
  });
  const context = (id: string, name: string, role: Role): ShopContext => ({
    ...shop,
    actor: { personId: id, name, role, device: 'test' },
  });
  const owner = context(personId, 'Ida Penn', 'owner');
  const people: Partial<Record<Role, ShopContext>> = { owner };
  for (const [role, name, initials] of [
    ['office', 'Otto Reed', 'OR'],
    ['bench', 'Ben Marsh', 'BM'],
  ] as const) {
    const { id } = await addPerson(owner, { commandId: newCommandId(), name, initials, role });
    people[role] = context(id, name, role);
  }
  return { core, clock, folder, owner, as: (role) => people[role] ?? owner };
}
