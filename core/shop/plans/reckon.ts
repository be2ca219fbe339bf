import type { ReckonInput, Reckoning } from '../../../shared/plan-answer.ts';
import { inLimbRoom } from '../../limb-room/limb-room.ts';
import type { OpenShop } from '../../storage/context.ts';
import { benchPolicyOf } from '../bench-policy/policy.ts';
import { rulesOf } from './rules.ts';

/** @see contract.plans.reckon */
export async function reckonPlan(
  shop: OpenShop,
  asked: ReckonInput,
  signal?: AbortSignal,
): Promise<Reckoning> {
  const rules = rulesOf(await benchPolicyOf(shop.read), asked.input);
  return inLimbRoom({ kind: 'reckon', what: { asked, rules } }, signal);
}
