import { expect, test } from 'vitest';
import { addCustomer, getCustomer } from '../../../core/shop/customers/customers.ts';
import { submitIntake } from '../../../core/shop/intake/submit.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { identifyCustomer } from '../../../core/shop/orders/identify-customer.ts';
import { identifyBow } from '../../../core/shop/orders/orders.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function unknownBox(bow: 'new' | 'later' = 'new') {
  const shop = await testShop();
  const { id } = await submitIntake(shop.as('office'), {
    commandId: newCommandId(),
    draftId: null,
    customer: {
      is: 'new',
      fields: { ...customerFields, name: 'Unknown sender, box of 2 March' },
    },
    bow: bow === 'new' ? { is: 'new', fields: bowFields } : { is: 'later' },
    order: orderFields,
    startsAt: 'arrived',
    cameBy: 'unannounced box',
    arrival: {
      openedOn: '2026-03-02',
      packaging: '',
      condition: 'No slip in the box',
      belongings: [],
      nothingCameAlong: true,
    },
  });
  const real = await addCustomer(shop.owner, {
    commandId: newCommandId(),
    ...customerFields,
    name: 'Nora Hale',
  });
  return { shop, id, customerId: real.id };
}

async function identify(shop: TestShop, id: string, customerId: string) {
  const { rowVersion } = (await getOrder(shop.owner, id)).card;
  return identifyCustomer(shop.as('office'), {
    commandId: newCommandId(),
    id,
    rowVersion,
    customerId,
  });
}

test('the order and its bow go to the customer whose they turned out to be', async () => {
  const { shop, id, customerId } = await unknownBox();
  await identify(shop, id, customerId);
  const order = await getOrder(shop.owner, id);
  expect(order.card).toMatchObject({ customerId, customerName: 'Nora Hale', stage: 'arrived' });
  expect(order.bow?.customerId).toBe(customerId);
  expect(order.history[0]?.summary).toBe('Belongs to Nora Hale');
  const known = await getCustomer(shop.owner, customerId);
  expect(known.bows).toHaveLength(1);
  expect(known.orders.map((card) => card.id)).toEqual([id]);
});

test('an order without a bow goes too, and the bow may then be one of that customer', async () => {
  const { shop, id, customerId } = await unknownBox('later');
  await identify(shop, id, customerId);
  expect((await getOrder(shop.owner, id)).card.customerId).toBe(customerId);
});

test('a bow that another order has is not taken from its owner', async () => {
  const { shop, id, customerId } = await unknownBox();
  const { card } = await getOrder(shop.owner, id);
  const second = await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'known', id: card.customerId ?? '' },
    bow: { is: 'known', id: card.bowId ?? '' },
    order: orderFields,
    startsAt: 'requested',
    cameBy: 'phone',
  });
  await expect(identify(shop, id, customerId)).rejects.toMatchObject({
    code: 'CONFLICT',
    message: `Order ${second.number} has the same bow.`,
  });
  expect((await getOrder(shop.owner, id)).card.customerId).toBe(card.customerId);
});

test('once a consent was answered the order stays with whom it was agreed', async () => {
  const { shop, id, customerId } = await unknownBox();
  await new Flow(shop, id).grant('price-and-scope');
  await expect(identify(shop, id, customerId)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a consent asked of the unknown sender is asked again of the owner', async () => {
  const { shop, id, customerId } = await unknownBox();
  await new Flow(shop, id).ask('price-and-scope');
  await identify(shop, id, customerId);
  expect((await getOrder(shop.owner, id)).consents[0]?.state).toBe('outdated');
});

test('an order on which work was agreed stays, and so does one of the shop', async () => {
  const { shop, id, customerId } = await unknownBox();
  await shop.owner.write
    .updateTable('shop_order')
    .set({ stage: 'agreed' })
    .where('id', '=', id)
    .execute();
  await expect(identify(shop, id, customerId)).rejects.toMatchObject({ code: 'CONFLICT' });
  const own = await takeIn(shop, {}, 'shop');
  await expect(identify(shop, own.id, customerId)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('the owner on the order decides which bows may be put on it', async () => {
  const { shop, id, customerId } = await unknownBox('later');
  const other = await takeIn(shop);
  const { bowId } = (await getOrder(shop.owner, other.id)).card;
  await identify(shop, id, customerId);
  const { rowVersion } = (await getOrder(shop.owner, id)).card;
  await expect(
    identifyBow(shop.owner, { commandId: newCommandId(), id, rowVersion, bowId: bowId ?? '' }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});
