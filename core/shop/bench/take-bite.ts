import type { RemovalMethod } from '../../../shared/bench.ts';
import type { Limb } from '../../../shared/bows.ts';
import type { BenchLimbWork } from '../../../shared/contract/bench-work.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { decimal } from '../../../shared/measure.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { changedOf } from '../record.ts';
import { workOfNext } from './advice.ts';
import { sentenceOf } from './bench-words.ts';
import { recordedAs } from './bite-method.ts';
import { onAdvice } from './on-advice.ts';
import type { Bench } from './read-bench.ts';
import { insertRemoval } from './record-removal.ts';
import { intendedDrop, type LimbWorks, workWithAmount } from './removal-drop.ts';
import { removalWords } from './removal-words.ts';
import type { Workdown } from './workdown-of.ts';

type Input = ContractInputs['bench']['takeBite'];
type Result = ContractOutputs['bench']['takeBite'];

interface Bite {
  work: Workdown;
  method: RemovalMethod;
  planned: LimbWorks;
  /** How the full cut blends out, place by place. */
  parts: Record<Limb, readonly number[]>;
}

/**
 * The advised bite. An owner who lets it pass without the tiller read gets the bite that the
 * figures give.
 */
function biteOf(bench: Bench, isOverridden: boolean): Bite {
  const { advice, work } = bench;
  const { step, outcome } = advice;
  const isDue = step.kind === 'bite' || (isOverridden && step.kind === 'read-tiller');
  if (work !== null && isDue && outcome !== null && outcome.next.stop === null) {
    const { next, method } = outcome;
    const planned = {
      upper: workOfNext(work, next, 'upper'),
      lower: workOfNext(work, next, 'lower'),
    };
    const parts = method.kind === 'narrow' ? method.parts : { upper: [], lower: [] };
    return { work, method: recordedAs[method.kind], planned, parts };
  }
  throw new ShopError('CONFLICT', `No bite is due now. ${sentenceOf(step)}`, {
    bite: sentenceOf(step),
  });
}

/** What was taken: as planned, or with the amounts that were given. */
function doneOf({ method, parts, planned }: Bite, other: Input['other']): LimbWorks {
  if (other === null) return planned;
  const limb = (one: BenchLimbWork) =>
    workWithAmount(one, method, other[one.limb], parts[one.limb]);
  const done = { upper: limb(planned.upper), lower: limb(planned.lower) };
  if (other.upper + other.lower > 0) return done;
  throw new ShopError(
    'BAD_INPUT',
    'Nothing was taken off either limb: there is no bite to record.',
    {
      other: 'Give what came off, or leave the bite for later.',
    },
  );
}

async function recordBite(
  trx: CommandTransaction,
  ctx: ShopContext,
  bench: Bench,
  input: Input,
  letPass: string | null,
): Promise<Result> {
  const bite = biteOf(bench, letPass !== null);
  const done = doneOf(bite, input.other);
  const { work, method, planned } = bite;
  const { drop, sd } = intendedDrop(work.response, method, done);
  // A hand that misses takes more where the bow answers more: the spread goes with it.
  const takes = { drop, sd: sd * work.replay.state.effectiveness };
  const { tool } = input;
  const removal = { method, planned, done, drop: takes, tool, note: input.note };
  const row = await insertRemoval(trx, ctx, bench, work, removal);
  const forecast = row.forecast_lbf === null ? '' : `; ${decimal(row.forecast_lbf)} lb expected`;
  await note(trx, ctx, bench.order.id, {
    kind: 'removal',
    summary: `${removalWords(method, done)}${forecast}`.slice(0, 1000),
    reason: letPass,
  });
  return { outcome: 'recorded', ...changedOf(row) };
}

/** @see contract.bench.takeBite */
export function takeBite(ctx: ShopContext, input: Input): Promise<Result> {
  return onAdvice(ctx, 'bench.takeBite', input, (trx, bench, letPass) =>
    recordBite(trx, ctx, bench, input, letPass),
  );
}
