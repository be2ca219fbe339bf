import { expect, test } from 'vitest';
import { answerConsent } from '../../../core/shop/consents/answer.ts';
import { editOrder } from '../../../core/shop/orders/orders.ts';
import { addPriceLine, addPriceLines, editPriceLine } from '../../../core/shop/prices/lines.ts';
import { arrangePriceLines, removePriceLine } from '../../../core/shop/prices/lines-standing.ts';
import { recordPayment, strikeOutPayment } from '../../../core/shop/prices/payments.ts';
import { editPricePolicy, getPricePolicy } from '../../../core/shop/prices/policy.ts';
import {
  addPriceService,
  addTypicalServices,
  listPriceServices,
} from '../../../core/shop/prices/services.ts';
import { undoCommand } from '../../../core/shop/undo/undo.ts';
import type { PaymentFields, PriceLineFields } from '../../../shared/contract/prices.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const work: PriceLineFields = {
  kind: 'service',
  what: 'Reduce weight to 45#',
  quantity: 1,
  unitCents: 18_000,
  discountBp: null,
  taxable: true,
  minutes: 180,
};
const tenOff: PriceLineFields = {
  ...work,
  kind: 'discount',
  what: 'Second bow this year',
  unitCents: 0,
  discountBp: 1000,
  minutes: 0,
};
const freight: PriceLineFields = {
  ...work,
  kind: 'freight',
  what: 'Return freight',
  unitCents: 2_500,
  taxable: false,
  minutes: 0,
};

async function pricedShop() {
  const shop = await testShop();
  const ctx = shop.owner;
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  const version = async () => (await flow.order()).card.rowVersion;
  const price = async () => (await flow.order()).price;
  return {
    shop,
    ctx,
    flow,
    id,
    price,
    add: async (fields: PriceLineFields, answerId: string | null = null) =>
      addPriceLine(ctx, {
        commandId: newCommandId(),
        orderId: id,
        rowVersion: await version(),
        ...fields,
        answerId,
      }),
    pay: (cents: number, kind: PaymentFields['kind'] = 'payment') =>
      recordPayment(ctx, {
        commandId: newCommandId(),
        orderId: id,
        kind,
        method: 'card',
        cents,
        receivedOn: '2026-03-02',
        reference: 'slip 4',
        note: '',
      }),
    version,
    setTax: async (taxRatePpm: number, depositPercent = 50) => {
      const { rowVersion } = await getPricePolicy(ctx);
      const policy = { taxName: 'State tax', taxRatePpm, depositPercent };
      const fees = { rushFeeCents: 4_000, returnFreightCents: 2_500 };
      const commandId = newCommandId();
      await editPricePolicy(ctx, { commandId, rowVersion, ...policy, ...fees });
    },
  };
}

test('every change of a line keeps the amount of the order equal to its total', async () => {
  const { ctx, add, price, flow, id, version, setTax } = await pricedShop();
  await setTax(62_500);
  const agrees = async (cents: number | null) => {
    const { price, estimateCents, card } = await flow.order();
    expect([price.totalCents, estimateCents, card.estimateCents]).toEqual([cents, cents, cents]);
  };
  await agrees(24_000);
  const before = await version();
  const line = await add(work);
  expect(await version()).toBe(before + 1);
  await agrees(19_125);
  const off = await add(tenOff);
  await add(freight);
  await agrees(16_200 + 1_013 + 2_500);
  const edit = { commandId: newCommandId(), id: line.id, rowVersion: 1 };
  await editPriceLine(ctx, { ...edit, ...work, quantity: 2 });
  await agrees(32_400 + 2_025 + 2_500);
  const ids = (await price()).lines.map((each) => each.id).toReversed();
  const arrange = { commandId: newCommandId(), orderId: id, rowVersion: await version() };
  const wrong = arrangePriceLines(ctx, { ...arrange, ids: [off.id, ...ids] });
  await expect(wrong).rejects.toMatchObject({ code: 'CONFLICT' });
  await arrangePriceLines(ctx, { ...arrange, ids });
  // Freight first: 10 % comes off it too.
  await agrees(2_500 - 250 + 36_000 + 2_250);
  for (const { id, rowVersion } of (await price()).lines) {
    await removePriceLine(ctx, { commandId: newCommandId(), id, rowVersion });
  }
  await agrees(null);
  expect((await flow.order()).price).toMatchObject({ taxName: null, taxRatePpm: null });
});

test('the tax of the first line stays with the order, whatever the shop sets later', async () => {
  const { add, price, setTax } = await pricedShop();
  await setTax(50_000);
  await add(work);
  await setTax(90_000);
  await add(freight);
  expect(await price()).toMatchObject({
    taxName: 'State tax',
    taxRatePpm: 50_000,
    taxCents: 900,
    totalCents: 21_400,
    depositCents: 10_700,
  });
});

test('with lines the amount is written by them alone; without any it is typed as before', async () => {
  const { ctx, add, id, version } = await pricedShop();
  const edit = async (estimateCents: number) => {
    const at = { commandId: newCommandId(), id, rowVersion: await version() };
    return editOrder(ctx, { ...at, ...orderFields, estimateCents });
  };
  await edit(30_000);
  await add(work);
  await expect(edit(30_000)).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { estimateCents: 'The price is made up of lines: change the lines.' },
  });
  await edit(18_000);
});

test('a line is refused that takes off more than there is, and nothing is half written', async () => {
  const { add, price, version } = await pricedShop();
  await add(work);
  const before = [await price(), await version()];
  const tooMuch = { ...tenOff, discountBp: null, unitCents: 18_001 };
  await expect(add(tooMuch)).rejects.toThrow(/takes off more than what stands above it/);
  await expect(add({ ...work, discountBp: 500 })).rejects.toThrow(/Only a discount/);
  await expect(add({ ...tenOff, discountBp: null })).rejects.toThrow(/how much comes off/);
  await expect(add({ ...work, quantity: 999, unitCents: 100_000_000 })).rejects.toThrow(/at most/);
  expect([await price(), await version()]).toEqual(before);
});

test('who saw an older price is told, and nothing is overwritten', async () => {
  const { ctx, add, id, version } = await pricedShop();
  const rowVersion = await version();
  await add(work);
  const late = { commandId: newCommandId(), orderId: id, rowVersion, ...work, answerId: null };
  await expect(addPriceLine(ctx, late)).rejects.toMatchObject({ code: 'STALE' });
});

test('the price list starts empty and is offered without prices; an order takes lines at the price of the day', async () => {
  const { shop, ctx, id, version, price } = await pricedShop();
  expect(await listPriceServices(ctx)).toEqual([]);
  const { added } = await addTypicalServices(ctx, { commandId: newCommandId() });
  expect(added).toBe(7);
  expect(await addTypicalServices(ctx, { commandId: newCommandId() })).toEqual({ added: 0 });
  expect((await listPriceServices(ctx)).every(({ priceCents }) => priceCents === 0)).toBe(true);
  const fields = { name: 'Re-mark', service: 're-mark' as const, minutes: 30, taxable: true };
  const again = addPriceService(ctx, { commandId: newCommandId(), ...fields, priceCents: 1 });
  await expect(again).rejects.toMatchObject({ code: 'CONFLICT' });
  const own = { ...fields, name: 'Hand lettering', priceCents: 3_500 };
  const { id: serviceId } = await addPriceService(ctx, { commandId: newCommandId(), ...own });
  const put = { orderId: id, rowVersion: await version(), serviceIds: [serviceId] };
  await addPriceLines(shop.as('office'), { commandId: newCommandId(), ...put });
  expect((await price()).lines).toMatchObject([{ what: 'Hand lettering', cents: 3_500 }]);
  const unknown = { ...put, rowVersion: await version(), serviceIds: ['nothing'] };
  const gone = addPriceLines(ctx, { commandId: newCommandId(), ...unknown });
  await expect(gone).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('without lines the customer is asked letter for letter as before', async () => {
  const { flow } = await pricedShop();
  await flow.ask('price-and-scope');
  const [asked] = (await flow.order()).consents;
  expect(asked?.subject).toBe('Work: Reduce weight, Re-mark\nTarget: 45# @ 28"\nPrice: $240.00');
});

test('a changed line closes the price and scope again, and the one asked then lists every line', async () => {
  const { ctx, add, flow, setTax } = await pricedShop();
  await setTax(62_500);
  const line = await add(work);
  await add(tenOff);
  await flow.grant('price-and-scope');
  const state = async () => (await flow.order()).consents[0]?.state;
  expect(await state()).toBe('granted');
  expect((await flow.order()).consents[0]?.subject).toBe(
    [
      'Work: Reduce weight, Re-mark',
      'Target: 45# @ 28"',
      'Price:',
      '- Reduce weight to 45#: $180.00',
      '- Second bow this year, 10 %: -$18.00',
      'State tax 6.25 % on $162.00: $10.13',
      'Total: $172.13',
    ].join('\n'),
  );
  // The same total in other words is another price too.
  const edit = { commandId: newCommandId(), id: line.id, rowVersion: 1, ...work };
  await editPriceLine(ctx, { ...edit, what: 'Reduce weight' });
  expect(await state()).toBe('outdated');
});

// 16 CCR 3354(a), an automotive rule used as an analogue: for extra work the customer gets a
// revised description, cost and revised total, and the authorisation is recorded.
test('extra work agreed by phone shows until a line takes it up; what is asked then has the revised total', async () => {
  const { ctx, add, flow, price, setTax } = await pricedShop();
  await setTax(0);
  await add(work);
  const asked = await flow.ask('price-and-scope');
  await answerConsent(ctx, {
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: asked.textSha256,
    answer: 'granted',
    answeredAt: '2026-03-02T10:00:00.000Z',
    channel: 'phone',
    answeredBy: 'Nora Hale',
    contact: '555 0142',
    words: 'Yes, and the new overlay too for 40 more.',
    costChangeCents: 4_000,
  });
  const [change] = (await price()).agreedChanges;
  expect(change).toMatchObject({ cents: 4_000, channel: 'phone', answeredBy: 'Nora Hale' });
  const extra: PriceLineFields = { ...work, kind: 'other', what: 'New overlay', unitCents: 4_000 };
  await add(extra, change?.answerId ?? '');
  expect((await price()).agreedChanges).toEqual([]);
  await expect(add(extra, change?.answerId ?? '')).rejects.toThrow(/already in the lines/);
  await flow.grant('price-and-scope');
  const [approved] = (await flow.order()).consents;
  expect(approved).toMatchObject({ state: 'granted' });
  expect(approved?.subject).toContain('- New overlay: $40.00');
  expect(approved?.subject).toContain('Total: $220.00');
  expect(approved?.answers[0]).toMatchObject({ channel: 'phone', contact: '555 0142' });
});

test('payments make the balance; too much is seen, and only what came in goes back', async () => {
  const { ctx, pay, price } = await pricedShop();
  await pay(12_000, 'deposit');
  const second = await pay(15_000);
  expect(await price()).toMatchObject({ receivedCents: 27_000, balanceCents: -3_000 });
  await expect(pay(27_001, 'refund')).rejects.toThrow(/Only \$270.00/);
  const back = await pay(15_000, 'refund');
  expect((await price()).balanceCents).toBe(12_000);
  const strike = (id: string) => {
    const reason = 'typed twice';
    return strikeOutPayment(ctx, { commandId: newCommandId(), id, rowVersion: 1, reason });
  };
  await expect(strike(second.id)).rejects.toThrow(/Part of it was paid back/);
  await strike(back.id);
  await strike(second.id);
  const { payments, balanceCents } = await price();
  expect(balanceCents).toBe(12_000);
  expect(payments.map(({ struckReason }) => struckReason)).toEqual([
    'typed twice',
    'typed twice',
    null,
  ]);
});

test('the box is packed when nothing is open, or by the terms noted', async () => {
  const { ctx, pay, flow } = await pricedShop();
  await flow.shop.core
    .shop()
    .write.updateTable('shop_order')
    .set({ stage: 'final-check' })
    .where('id', '=', flow.orderId)
    .execute();
  const isMissing = async () =>
    (await flow.order()).next?.missing.some(({ item }) => item === 'paid-or-terms');
  await pay(23_999);
  expect(await isMissing()).toBe(true);
  const commandId = newCommandId();
  await recordPayment(ctx, {
    commandId,
    orderId: flow.orderId,
    kind: 'payment',
    method: 'cash',
    cents: 1,
    receivedOn: '2026-03-02',
    reference: '',
    note: '',
  });
  expect(await isMissing()).toBe(false);
  await undoCommand(ctx, { commandId: newCommandId(), of: commandId });
  expect(await isMissing()).toBe(true);
  await flow.note('paid-or-terms', 'pays on the first of the month');
  expect(await isMissing()).toBe(false);
});
