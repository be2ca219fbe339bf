import { expect, test } from 'vitest';
import { shippingTagPdf } from '../../../core/papers/shipping-tag.ts';
import { sendHome } from '../../../core/shop/orders/going-home.ts';
import { editOrder } from '../../../core/shop/orders/orders.ts';
import { shippingTagData } from '../../../core/shop/papers/shipping-tag-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { recordShipment } from '../../../core/shop/shipments/shipments.ts';
import type { GoingHome } from '../../../shared/stages.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { textOf } from '../papers/read-back.ts';

async function sentHome(kind: GoingHome) {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  await flow.move('arrived', { override: { reason: 'papers follow' } });
  const { id, rowVersion } = (await flow.order()).card;
  await editOrder(shop.owner, {
    ...orderFields,
    commandId: newCommandId(),
    id,
    rowVersion,
    privateNotes: 'argued over money',
  });
  await sendHome(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: rowVersion + 1,
    kind,
    reason: 'too dear for them',
  });
  const tag = async (copy: 'parcel' | 'office' = 'parcel') =>
    shippingTagData(await flow.order(), await getShop(shop.owner), {
      format: '4x6',
      copy,
      printedAt: '2026-03-02T09:00:00.000Z',
    });
  return { shop, flow, tag };
}

test('nothing private travels on the outside of the parcel', async () => {
  const { shop, flow, tag } = await sentHome('broken');
  await recordShipment(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    direction: 'out',
    carrierId: null,
    carrierName: 'Postal ground',
    shape: 'box',
    lengthIn: 66,
    widthIn: 5,
    heightIn: 5,
    weightLb: 6,
    declaredCents: 48_000,
    valueEvidence: 'receipt',
    insured: true,
    tracking: '9400 1111',
    shippedOn: null,
    deliveredOn: null,
    note: 'left at the side door',
  });
  const parcel = await textOf((await shippingTagPdf(await tag())).bytes);
  expect(parcel).toContain('Postal ground, tracking 9400 1111');
  const words = [
    'too dear',
    'argued',
    'broken',
    '480',
    '66 x 5',
    'receipt',
    'side door',
    'Oldfield',
    'DO NOT STRING',
  ];
  for (const word of words) expect(parcel).not.toContain(word);
  const office = await textOf((await shippingTagPdf(await tag('office'))).bytes);
  expect(office).toContain('$480.00');
  expect(office).toContain('66 x 5 x 5 in');
  for (const word of ['too dear', 'argued', 'receipt']) expect(office).not.toContain(word);
});
