import { expect, test } from 'vitest';
import { timelineOf } from '../../../renderer/screens/orders/head/timeline.ts';

type Order = Parameters<typeof timelineOf>[0];
const moved = (toStage: Order['card']['stage'], at: string) => ({ toStage, at });

/** Only what the timeline reads; newest history first, as the core answers it. */
function order(stage: Order['card']['stage'], history: ReturnType<typeof moved>[]): Order {
  const card = { route: ['requested', 'in-mail', 'arrived', 'agreed'], stage, stageSince: 'now' };
  return { card, history } as unknown as Order;
}

test('a stage that is ahead again after a step back shows no day', () => {
  const steps = timelineOf(
    order('in-mail', [
      moved('in-mail', 'third'),
      moved('arrived', 'second'),
      moved('in-mail', 'first'),
      moved('requested', 'zero'),
    ]),
  );
  expect(steps.map(({ state, enteredAt }) => [state, enteredAt])).toEqual([
    ['passed', 'zero'],
    ['current', 'now'],
    ['ahead', null],
    ['ahead', null],
  ]);
});

test('a stage that was jumped over is passed without a day', () => {
  const steps = timelineOf(order('agreed', [moved('agreed', 'b'), moved('in-mail', 'a')]));
  expect(steps.map((step) => step.enteredAt)).toEqual([null, 'a', null, 'now']);
});

test('a cancelled request stands after what it went through, with nothing ahead', () => {
  const steps = timelineOf(order('cancelled', [moved('cancelled', 'c'), moved('requested', 'a')]));
  expect(steps).toEqual([
    { stage: 'requested', state: 'passed', enteredAt: 'a' },
    { stage: 'cancelled', state: 'current', enteredAt: 'now' },
  ]);
});
