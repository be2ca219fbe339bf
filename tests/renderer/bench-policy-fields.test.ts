import { expect, test } from 'vitest';
import {
  draftOf,
  policyFields,
  policyOf,
  usualText,
} from '../../renderer/screens/settings/bench-policy-fields.ts';
import { benchPolicy, usualBenchPolicy } from '../../shared/bench-policy.ts';

function figuresIn(value: unknown): number {
  if (typeof value === 'number') return 1;
  return Object.values(Object(value)).reduce<number>((sum, one) => sum + figuresIn(one), 0);
}

test('every figure of the policy has its field', () => {
  const { trapFace: _, trackRule: __, ...figures } = usualBenchPolicy;
  expect(policyFields).toHaveLength(figuresIn(figures));
});

test('a policy comes back from its form as it went in', () => {
  expect(policyOf(draftOf(usualBenchPolicy))).toEqual(usualBenchPolicy);
  const changed = { ...usualBenchPolicy, reserveLbf: 0.75, trackRule: 'off' as const };
  expect(policyOf(draftOf(changed))).toEqual(changed);
});

test('parts are shown as percent, and an empty field is refused', () => {
  const draft = draftOf(usualBenchPolicy);
  expect(draft.figures['limits.refuseDropPart']).toBe(25);
  const empty = { ...draft, figures: { ...draft.figures, reserveLbf: null } };
  expect(benchPolicy.safeParse(policyOf(empty)).success).toBe(false);
  const [glass] = policyFields;
  expect(glass && usualText(glass)).toBe('Common practice: 0.03 in');
});
