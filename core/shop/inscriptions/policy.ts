import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { MarkingRoundLbf } from '../../../shared/inscription.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changeShop } from '../setup/change-shop.ts';

/** The step weights are rounded to; the nearest pound where the shop has said nothing it knows. */
function roundOf(lbf: number): MarkingRoundLbf {
  return lbf === 0.5 ? 0.5 : 1;
}

export async function markingPolicy(
  db: OpenShop['read'],
): Promise<ContractOutputs['inscriptions']['policy']> {
  const row = await db
    .selectFrom('shop')
    .select(['marking_round_lbf', 'row_version'])
    .executeTakeFirstOrThrow();
  return { markingRoundLbf: roundOf(row.marking_round_lbf), rowVersion: row.row_version };
}

/** @see contract.inscriptions.setPolicy */
export function setMarkingPolicy(
  ctx: ShopContext,
  input: ContractInputs['inscriptions']['setPolicy'],
): Promise<Changed> {
  return changeShop(ctx, input, 'inscriptions.setPolicy', {
    marking_round_lbf: input.markingRoundLbf,
  });
}
