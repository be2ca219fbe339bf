import type { PricePolicy } from '../../../shared/contract/prices.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changeShop } from '../setup/change-shop.ts';

/** Tax, deposit and fees as the owner set them. */
export async function getPricePolicy(shop: OpenShop): Promise<PricePolicy> {
  const row = await shop.read.selectFrom('shop').selectAll().executeTakeFirstOrThrow();
  return {
    rowVersion: row.row_version,
    taxName: row.tax_name,
    taxRatePpm: row.tax_rate_ppm,
    depositPercent: row.deposit_percent,
    rushFeeCents: row.rush_fee_cents,
    returnFreightCents: row.return_freight_cents,
  };
}

/** @see contract.prices.editPolicy */
export function editPricePolicy(
  ctx: ShopContext,
  input: ContractInputs['prices']['editPolicy'],
): Promise<Changed> {
  return changeShop(ctx, input, 'prices.editPolicy', {
    tax_name: input.taxName,
    tax_rate_ppm: input.taxRatePpm,
    deposit_percent: input.depositPercent,
    rush_fee_cents: input.rushFeeCents,
    return_freight_cents: input.returnFreightCents,
  });
}
