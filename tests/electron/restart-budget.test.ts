import { expect, test } from 'vitest';
import { restartBudget } from '../../electron/restart-budget.ts';

function budgetAt() {
  const clock = { now: 0 };
  return { clock, budget: restartBudget({ restarts: 3, within: 60_000, now: () => clock.now }) };
}

test('three restarts in a minute, and no fourth', () => {
  const { budget, clock } = budgetAt();
  const taken = [0, 10, 20, 59_999].map((at) => {
    clock.now = at;
    return budget.take();
  });
  expect(taken).toEqual([true, true, true, false]);
});

test('each restart counts for a minute, not for a calendar minute', () => {
  const { budget, clock } = budgetAt();
  for (const at of [0, 30_000, 50_000]) {
    clock.now = at;
    expect(budget.take()).toBe(true);
  }
  clock.now = 60_000;
  expect(budget.take()).toBe(true);
  expect(budget.take()).toBe(false);
  clock.now = 90_000;
  expect(budget.take()).toBe(true);
});

test('a refused restart does not use up a later one', () => {
  const { budget, clock } = budgetAt();
  for (let i = 0; i < 3; i++) budget.take();
  clock.now = 30_000;
  expect(budget.take()).toBe(false);
  clock.now = 60_000;
  expect([budget.take(), budget.take(), budget.take()]).toEqual([true, true, true]);
});

test('a person who says try again starts the count afresh', () => {
  const { budget } = budgetAt();
  for (let i = 0; i < 3; i++) budget.take();
  budget.refill();
  expect(budget.take()).toBe(true);
});
