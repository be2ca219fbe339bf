import type { CarePolicy } from '../../../shared/contract/care.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changeShop } from '../setup/change-shop.ts';

/** What the shop says on its care cards of its own accord. */
export async function getCarePolicy(shop: OpenShop): Promise<CarePolicy> {
  const row = await shop.read.selectFrom('shop').selectAll().executeTakeFirstOrThrow();
  return {
    rowVersion: row.row_version,
    arrowGrainsPerLb: row.arrow_grains_per_lb,
    careTerms: row.care_terms,
  };
}

/** @see contract.care.editPolicy */
export function editCarePolicy(
  ctx: ShopContext,
  input: ContractInputs['care']['editPolicy'],
): Promise<Changed> {
  return changeShop(ctx, input, 'care.editPolicy', {
    arrow_grains_per_lb: input.arrowGrainsPerLb,
    care_terms: input.careTerms,
  });
}
