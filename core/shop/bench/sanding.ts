import type { Limb } from '../../../shared/bows.ts';
import type { BenchLimbWork } from '../../../shared/contract/bench-work.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { decimal } from '../../../shared/measure.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { changedOf } from '../record.ts';
import { sentenceOf } from './bench-words.ts';
import { onAdvice } from './on-advice.ts';
import type { Bench } from './read-bench.ts';
import { insertRemoval } from './record-removal.ts';
import type { Workdown } from './workdown-of.ts';

type Input = ContractInputs['bench']['recordSanding'];
type Result = ContractOutputs['bench']['recordSanding'];

/** Sanding that is due here, with what it takes. */
function dueOf({ advice, work }: Bench): { work: Workdown; thou: { mean: number; sd: number } } {
  const { step, sandings } = advice;
  const thou = sandings?.toCome ?? null;
  if (work !== null && thou !== null && step.kind === 'sand-only' && step.here)
    return { work, thou };
  const sentence = `No sanding is due here now. ${sentenceOf(step)}`;
  throw new ShopError('CONFLICT', sentence, { sanding: sentence });
}

function sandedOf(work: Workdown, thou: { mean: number; sd: number }) {
  const { upper, lower } = work.response;
  const perThou = upper.perThouBothFaces.drop + lower.perThouBothFaces.drop;
  const limb = (name: Limb): BenchLimbWork => ({
    limb: name,
    cuts: [],
    bellyThou: thou.mean,
    backThou: thou.mean,
  });
  return {
    works: { upper: limb('upper'), lower: limb('lower') },
    // One hand sands all four faces alike, so their spreads do not average out.
    drop: { drop: 1 - Math.exp(-perThou * thou.mean), sd: perThou * thou.sd },
  };
}

/** @see contract.bench.recordSanding */
export function recordSanding(ctx: ShopContext, input: Input): Promise<Result> {
  return onAdvice(ctx, 'bench.recordSanding', input, async (trx, bench, letPass) => {
    const { work, thou } = dueOf(bench);
    const { works, drop } = sandedOf(work, thou);
    const removal = { method: 'strip' as const, planned: works, done: works, drop };
    const { tool } = input;
    const row = await insertRemoval(trx, ctx, bench, work, { ...removal, tool, note: input.note });
    const expected = row.forecast_lbf === null ? '' : `; ${decimal(row.forecast_lbf)} lb expected`;
    await note(trx, ctx, bench.order.id, {
      kind: 'removal',
      summary: `Stripped and sanded, about ${decimal(thou.mean, 2)} thou a face${expected}`,
      reason: letPass,
    });
    return { outcome: 'recorded', ...changedOf(row) };
  });
}
