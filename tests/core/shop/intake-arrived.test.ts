import { expect, test } from 'vitest';
import { submitIntake } from '../../../core/shop/intake/submit.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import type { IntakeArrival } from '../../../shared/contract/intake.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { newCommandId, testShop } from '../../support/test-shop.ts';

type Submit = ContractInputs['intake']['submit'];

const seen: IntakeArrival = {
  openedOn: '2026-03-02',
  packaging: 'Handed over in a sock',
  condition: 'Dry, finish crazed at the lower fade',
  belongings: ['String', 'Sock'],
  nothingCameAlong: false,
};

const walkIn = (): Submit => ({
  commandId: newCommandId(),
  draftId: null,
  customer: { is: 'new', fields: customerFields },
  bow: { is: 'new', fields: bowFields },
  order: orderFields,
  startsAt: 'arrived',
  cameBy: 'walk-in',
  arrival: seen,
});

test('a walk-in stands in "arrived" at once, with its record, its list and both steps in the history', async () => {
  const shop = await testShop();
  const taken = await submitIntake(shop.as('office'), {
    ...walkIn(),
    handover: 'collected',
    cameAs: 'limbs-only',
  });
  expect(taken).toMatchObject({ stage: 'arrived', missing: [], number: '26-0001' });
  const order = await getOrder(shop.owner, taken.id);
  expect(order.card).toMatchObject({ stage: 'arrived', rowVersion: taken.rowVersion });
  expect(order.card.route.at(-1)).toBe('collected');
  expect(order.arrival).toMatchObject({
    cameBy: 'walk-in',
    condition: seen.condition,
    packaging: seen.packaging,
    strung: 'not-yet',
    completedAt: null,
    personName: 'Otto Reed',
  });
  expect(order.belongings.map((belonging) => belonging.what)).toEqual(['String', 'Sock']);
  expect(order.history.map((line) => [line.kind, line.fromStage, line.toStage])).toEqual([
    ['move', 'in-mail', 'arrived'],
    ['arrival', null, null],
    ['created', null, 'in-mail'],
  ]);
  const row = await shop.owner.read.selectFrom('shop_order').select('came_as').executeTakeFirst();
  expect(row?.came_as).toBe('limbs-only');
});

test('a bow to be identified later stays in the mail, and the answer says what is missing', async () => {
  const shop = await testShop();
  const taken = await submitIntake(shop.owner, { ...walkIn(), bow: { is: 'later' } });
  expect(taken.stage).toBe('in-mail');
  expect(taken.missing.map((item) => item.item)).toEqual(['bow-identified']);
  const order = await getOrder(shop.owner, taken.id);
  expect(order.card).toMatchObject({ stage: 'in-mail', rowVersion: taken.rowVersion });
  expect(order.arrival?.condition).toBe(seen.condition);
});

test('a list not yet made keeps it in the mail; "nothing came along" does not', async () => {
  const shop = await testShop();
  const open = await submitIntake(shop.owner, {
    ...walkIn(),
    arrival: { ...seen, belongings: [] },
  });
  expect(open).toMatchObject({ stage: 'in-mail', missing: [expect.anything()] });
  const none = await submitIntake(shop.owner, {
    ...walkIn(),
    arrival: { ...seen, belongings: [], nothingCameAlong: true },
  });
  expect(none).toMatchObject({ stage: 'arrived', missing: [] });
});

test.each([
  ['a bow that is here and was not looked at', { arrival: undefined }],
  ['a bow that is away and was looked at', { startsAt: 'in-mail' as const }],
  ['something that came along and did not', { arrival: { ...seen, nothingCameAlong: true } }],
])('%s is refused and nothing is written', async (_what, change) => {
  const shop = await testShop();
  const { arrival, ...rest } = { ...walkIn(), ...change };
  const input: Submit = arrival === undefined ? rest : { ...rest, arrival };
  await expect(submitIntake(shop.owner, input)).rejects.toMatchObject({ code: 'BAD_INPUT' });
  for (const table of ['shop_order', 'customer', 'bow', 'arrival', 'belonging'] as const) {
    expect(await shop.owner.read.selectFrom(table).selectAll().execute()).toEqual([]);
  }
});

test("stripping first is the owner's decision at intake too", async () => {
  const shop = await testShop();
  await expect(
    submitIntake(shop.as('office'), { ...walkIn(), stripFirst: true }),
  ).rejects.toMatchObject({ code: 'NOT_ALLOWED' });
  const { id } = await submitIntake(shop.owner, { ...walkIn(), stripFirst: true });
  const { route } = (await getOrder(shop.owner, id)).card;
  expect(route.indexOf('strip-sand')).toBeLessThan(route.indexOf('weight-work'));
});

test('a repeat after a lost answer takes the box in once', async () => {
  const shop = await testShop();
  const input = walkIn();
  const first = await submitIntake(shop.owner, input);
  expect(await submitIntake(shop.owner, input)).toEqual(first);
  expect(await shop.owner.read.selectFrom('belonging').selectAll().execute()).toHaveLength(2);
});
