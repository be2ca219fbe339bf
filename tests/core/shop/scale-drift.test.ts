import { expect, test } from 'vitest';
import { scaleChecks } from '../../../core/shop/scales/drift.ts';
import { checkScale } from '../../../core/shop/scales/scales.ts';
import { checkedScale, newCommandId, testShop } from '../../support/test-shop.ts';

async function drifting(readings: readonly (readonly [low: number, high: number])[]) {
  const shop = await testShop();
  const scaleId = await checkedScale(shop);
  const { write } = shop.core.shop();
  await write.deleteFrom('scale_check').execute();
  for (const [lowReadingLbf, highReadingLbf] of readings) {
    shop.clock.advance(24 * 3_600_000);
    await checkScale(shop.owner, {
      commandId: newCommandId(),
      scaleId,
      lowLoadLbf: 20,
      lowReadingLbf,
      highLoadLbf: 60,
      highReadingLbf,
    });
  }
  return { shop, scaleId };
}

test('each check tells its error at both loads, newest first', async () => {
  const { shop, scaleId } = await drifting([
    [20.1, 59.9],
    [20.2, 60.3],
  ]);
  const { checks, drift, words } = await scaleChecks(shop.owner, scaleId);
  expect(checks.map((one) => [one.lowErrorLbf, one.highErrorLbf, one.worstErrorLbf])).toEqual(
    [
      [0.2, 0.3, 0.3],
      [0.1, -0.1, 0.1],
    ].map(([low, high], i) => [low, high, i === 0 ? 0.3 : -0.1]),
  );
  expect(drift).toMatchObject({ checks: 2, lowLbf: 0.1, highLbf: 0.4 });
  expect(words).toContain('0.1 lb up at the low load and 0.4 lb up at the high load');
  expect(words).toContain('have it adjusted');
});

test('a year with one check or none says that nothing can be said', async () => {
  const { shop, scaleId } = await drifting([[20, 60]]);
  const one = await scaleChecks(shop.owner, scaleId);
  expect(one.drift).toBeNull();
  expect(one.words).toContain('Fewer than two checks this year');
  shop.clock.advance(400 * 24 * 3_600_000);
  expect((await scaleChecks(shop.owner, scaleId)).drift).toBeNull();
});

test('a scale that stands still within its display is not said to drift', async () => {
  const { shop, scaleId } = await drifting([
    [20, 60],
    [20, 60.1],
    [20, 60],
  ]);
  const { words, drift } = await scaleChecks(shop.owner, scaleId);
  expect(drift).toMatchObject({ checks: 3, lowLbf: 0, highLbf: 0 });
  expect(words).toContain('not moved');
});

test('a scale that is not there has no checks', async () => {
  const shop = await testShop();
  await expect(scaleChecks(shop.owner, 'nothing')).rejects.toMatchObject({ code: 'NOT_FOUND' });
});
