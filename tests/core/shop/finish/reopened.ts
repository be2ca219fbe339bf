import { onTestFinished } from 'vitest';
import { Core } from '../../../../core/host/core.ts';
import type { TestShop } from '../../../support/test-shop.ts';
import { Flow } from '../../../support/whole-flow.ts';

/** The shop closed, and opened again from its folder by a new program; the clock goes on meanwhile. */
export async function reopened(shop: TestShop, closedForMs = 0): Promise<TestShop> {
  await shop.core.close();
  shop.clock.advance(closedForMs);
  const core = new Core({ dataFolder: shop.folder, now: shop.clock.now });
  onTestFinished(() => core.close());
  const state = await core.settled();
  if (state.phase !== 'ready') throw new Error(JSON.stringify(state));
  const context = (before: TestShop['owner']) => ({ ...core.shop(), actor: before.actor });
  return {
    ...shop,
    core,
    owner: context(shop.owner),
    as: (role) => context(shop.as(role)),
  };
}

/** The same order in the shop that was opened again. */
export const sameOrder = (shop: TestShop, { orderId }: Flow) => new Flow(shop, orderId);
