import { expect, test } from 'vitest';
import { getCarePolicy } from '../../../../core/shop/care/policy.ts';
import { careCardData } from '../../../../core/shop/papers/care-card-data.ts';
import { finishers, finishFacts } from '../../../../core/shop/papers/finish-facts.ts';
import { getShop } from '../../../../core/shop/setup/shop.ts';
import { finishKit, usableBatch } from '../../../support/finish-kit.ts';
import { oldNote } from '../../../support/old-note.ts';
import { takeIn, testShop } from '../../../support/test-shop.ts';
import { Flow } from '../../../support/whole-flow.ts';

test('papers tell the days that follow from the last coat and its sheet', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  await kit.spray([bow], { batchId: await usableBatch(kit) });
  const order = await bow.order();
  const words = 'by its data sheet, last coat on 2026-03-02';
  expect(finishFacts(order)).toEqual({
    finish: 'Satin top coat, data sheet 4 of 2026-01-15',
    lastCoatOn: '2026-03-02',
    strung: { on: '2026-03-05', words },
    safeToWrap: { on: '2026-03-07', words },
    cured: { on: '2026-03-17', words },
  });
  expect(finishers(order)).toEqual(['Ida Penn']);
  const card = careCardData(
    order,
    await getShop(kit.shop.owner),
    await getCarePolicy(kit.shop.owner),
    { format: 'letter', copy: 'customer', printedAt: '2026-03-02T09:00:00.000Z' },
  );
  const rows = new Map(card.finish);
  expect(rows.get('Safe to wrap or case')).toBe(`from 2026-03-07 (${words})`);
  expect(rows.get('Fully cured')).toBe(`from 2026-03-17 (${words})`);
});

test('what was noted after the last coat counts more than the sheet', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  await kit.spray([bow], { batchId: await usableBatch(kit) });
  await oldNote(bow, 'safe-to-wrap', 'prints under the thumb', 'not-ok');
  expect(finishFacts(await bow.order()).safeToWrap).toBeNull();
  await oldNote(bow, 'safe-to-wrap', 'ten days in a cold room');
  expect(finishFacts(await bow.order()).safeToWrap?.words).toBe('ten days in a cold room');
});

test('orders of before the records tell what was noted', async () => {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  expect(finishFacts(await flow.order())).toMatchObject({ finish: null, lastCoatOn: null });
  await oldNote(flow, 'finish-system', 'two-part clear,\nsheet of 2025-06');
  await oldNote(flow, 'string-and-flex', 'two days at 70 F');
  expect(finishFacts(await flow.order())).toMatchObject({
    finish: 'two-part clear, sheet of 2025-06',
    strung: { on: '2026-03-02', words: 'two days at 70 F' },
    cured: null,
  });
});
