import { expect, test } from 'vitest';
import { defaultLimits } from '../../../core/limb/index.ts';
import { sandingAllowances } from '../../../core/limb/workdown/next-bite-sanding.ts';
import { editBenchPolicy, getBenchPolicy } from '../../../core/shop/bench-policy/policy.ts';
import { reckonPlan } from '../../../core/shop/plans/reckon.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { longbowInput } from '../../support/plan-input.ts';
import { newCommandId, testShop } from '../../support/test-shop.ts';

test('the usual policy is the common practice that the mechanics brings along', () => {
  expect(usualBenchPolicy.limits).toEqual(defaultLimits);
  for (const [sanding, { mean, sd }] of Object.entries(sandingAllowances)) {
    expect(usualBenchPolicy.allowances).toMatchObject({
      [sanding]: { meanThou: mean, sdThou: sd },
    });
  }
});

test('a policy comes back as it was set, and rules the next plan', async () => {
  const { owner } = await testShop();
  expect(await getBenchPolicy(owner)).toEqual({ policy: usualBenchPolicy, rowVersion: 0 });
  const policy = {
    ...usualBenchPolicy,
    limits: { ...usualBenchPolicy.limits, refuseDropPart: 0.12, confirmDropPart: 0.11 },
    reserveLbf: 0.75,
    trapFace: 'belly' as const,
    trackRule: 'off' as const,
  };
  await editBenchPolicy(owner, { commandId: newCommandId(), rowVersion: 0, policy });
  expect(await getBenchPolicy(owner)).toEqual({ policy, rowVersion: 1 });
  const answer = await reckonPlan(owner, { input: longbowInput, detail: 'sliding' });
  expect(answer).toMatchObject({ drop: { level: 'refused' }, recommended: null });
  const back = { commandId: newCommandId(), rowVersion: 1, policy: usualBenchPolicy };
  expect(await editBenchPolicy(owner, back)).toMatchObject({ rowVersion: 2 });
});

test('two owners do not overwrite each other, nor the first one', async () => {
  const { owner } = await testShop();
  const edit = (rowVersion: number) =>
    editBenchPolicy(owner, { commandId: newCommandId(), rowVersion, policy: usualBenchPolicy });
  await edit(0);
  await expect(edit(0)).rejects.toMatchObject({ code: 'STALE' });
  await edit(1);
  await expect(edit(1)).rejects.toMatchObject({ code: 'STALE' });
});

test('levels of a drop that contradict each other are refused by name', async () => {
  const { owner } = await testShop();
  const limits = { ...usualBenchPolicy.limits, confirmDropPart: 0.3 };
  const policy = { ...usualBenchPolicy, limits };
  await expect(
    editBenchPolicy(owner, { commandId: newCommandId(), rowVersion: 0, policy }),
  ).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { 'limits.refuseDropPart': expect.stringContaining('raise this') },
  });
});
