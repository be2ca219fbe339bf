import { randomUUID } from 'node:crypto';
import { onTestFinished } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { submitIntake } from '../../core/shop/intake/submit.ts';
import { addScale, checkScale } from '../../core/shop/scales/scales.ts';
import { addPerson } from '../../core/shop/setup/people.ts';
import { openShop } from '../../core/shop/setup/shop.ts';
import type { ShopContext } from '../../core/storage/context.ts';
import type { Role } from '../../shared/people.ts';
import { TestClock } from './clock.ts';
import { bowFields, customerFields, orderFields, shopFields } from './fixtures.ts';
import { tempFolder } from './temp-folder.ts';

export const newCommandId = () => randomUUID();

export interface TestShop {
  core: Core;
  clock: TestClock;
  folder: string;
  owner: ShopContext;
  as(role: Role): ShopContext;
}

/** A real shop in a folder of its own: an owner, an office hand, a bench hand. */
export async function testShop(): Promise<TestShop> {
  const folder = tempFolder();
  const clock = new TestClock();
  const core = new Core({ dataFolder: folder, now: clock.now });
  onTestFinished(() => core.close());
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

export interface TestOrder {
  id: string;
  number: string;
}

/** One request as the office would take it in. */
export async function takeIn(
  shop: TestShop,
  change: Partial<typeof orderFields> = {},
  customer: 'new' | 'shop' = 'new',
): Promise<TestOrder> {
  const result = await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: customer === 'shop' ? { is: 'shop' } : { is: 'new', fields: customerFields },
    bow: { is: 'new', fields: bowFields },
    order: { ...orderFields, ...change },
    startsAt: 'requested',
    cameBy: 'phone',
  });
  return { id: result.id, number: result.number };
}

/** A scale checked today, reading true. */
export async function checkedScale(shop: TestShop): Promise<string> {
  const { id } = await addScale(shop.owner, {
    commandId: newCommandId(),
    name: 'bench scale',
    resolutionLbf: 0.1,
  });
  await checkScale(shop.owner, {
    commandId: newCommandId(),
    scaleId: id,
    lowLoadLbf: 20,
    lowReadingLbf: 20.1,
    highLoadLbf: 50,
    highReadingLbf: 50.2,
  });
  return id;
}
