import { expect, test } from 'vitest';
import { editShop, getShop } from '../../../core/shop/setup/shop.ts';
import {
  unclaimedAfterFee,
  usualWaiting,
  type WaitingPolicy,
  waitingPolicy,
} from '../../../shared/waiting-policy.ts';
import { shopFields } from '../../support/fixtures.ts';
import { newCommandId, testShop } from '../../support/test-shop.ts';

test('how long the shop waits is kept with the shop, which is not the demo', async () => {
  const shop = await testShop();
  expect(await getShop(shop.owner)).toMatchObject({ ...usualWaiting, isDemo: false });
  const policy: WaitingPolicy = { reminderDays: [2, 30], storageFeeDays: 60, abandonedDays: 365 };
  await editShop(shop.owner, {
    commandId: newCommandId(),
    rowVersion: 1,
    ...shopFields,
    ...policy,
  });
  expect(await getShop(shop.owner)).toMatchObject(policy);
});

test('the usual days fit their own rules', () => {
  expect(waitingPolicy.parse(usualWaiting)).toEqual(usualWaiting);
  expect(unclaimedAfterFee(usualWaiting)).toBe(true);
});

test.each([[[]], [[3, 3]], [[10, 3]], [[0, 3]], [[1.5]], [[366]], [[1, 2, 3, 4, 5, 6, 7]]])(
  'reminder days %j are refused',
  (reminderDays) => {
    expect(waitingPolicy.safeParse({ ...usualWaiting, reminderDays }).success).toBe(false);
  },
);

test('a bow is unclaimed only later than the fee', () => {
  const equal = { ...usualWaiting, storageFeeDays: 90, abandonedDays: 90 };
  expect(unclaimedAfterFee(equal)).toBe(false);
  expect(unclaimedAfterFee({ ...equal, abandonedDays: 91 })).toBe(true);
});
