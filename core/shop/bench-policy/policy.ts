import {
  type BenchPolicy,
  benchPolicy,
  benchPolicyTroubles,
  usualBenchPolicy,
} from '../../../shared/bench-policy.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changedOf } from '../record.ts';

/** The one row of the shop's rules at the weight bench. */
const policyId = 'bench';

function storedPolicy(db: OpenShop['read']) {
  return db.selectFrom('bench_policy').selectAll().where('id', '=', policyId).executeTakeFirst();
}

/** The shop's rules at the weight bench; the usual ones while it has set none. */
export async function benchPolicyOf(db: OpenShop['read']): Promise<BenchPolicy> {
  const row = await storedPolicy(db);
  return row === undefined ? usualBenchPolicy : benchPolicy.parse(JSON.parse(row.body_json));
}

/** @see contract.benchPolicy.get */
export async function getBenchPolicy(
  shop: OpenShop,
): Promise<ContractOutputs['benchPolicy']['get']> {
  const row = await storedPolicy(shop.read);
  return { policy: await benchPolicyOf(shop.read), rowVersion: row?.row_version ?? 0 };
}

function refuseOddPolicy(policy: BenchPolicy): void {
  const troubles = benchPolicyTroubles(policy);
  const [first] = Object.values(troubles);
  if (first !== undefined) throw new ShopError('BAD_INPUT', first, troubles);
}

/** @see contract.benchPolicy.edit */
export function editBenchPolicy(
  ctx: ShopContext,
  input: ContractInputs['benchPolicy']['edit'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'benchPolicy.edit' }, async (trx) => {
    refuseOddPolicy(input.policy);
    const body = { body_json: JSON.stringify(input.policy) };
    const stored = await storedPolicy(trx.db);
    if (stored === undefined && input.rowVersion === 0) {
      return changedOf(await trx.insert('bench_policy', { id: policyId, ...body }));
    }
    return changedOf(await trx.update('bench_policy', policyId, input.rowVersion, body));
  });
}
