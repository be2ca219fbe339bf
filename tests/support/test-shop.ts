import { onTestFinished } from 'vitest';
import { submitIntake } from '../../core/shop/intake/submit.ts';
import { addScale, checkScale } from '../../core/shop/scales/scales.ts';
import { bowFields, customerFields, orderFields } from './fixtures.ts';
import { furnishShop, type TestShop } from './furnish-shop.ts';
import { newCommandId } from './new-command-id.ts';
import { tempFolder } from './temp-folder.ts';

export type { TestShop } from './furnish-shop.ts';
export { newCommandId } from './new-command-id.ts';

/** A real shop in a folder of its own, which goes when the test ends. */
export async function testShop(): Promise<TestShop> {
  const shop = await furnishShop(tempFolder());
  onTestFinished(() => shop.core.close());
  return shop;
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
