import type { BenchView } from '../../../shared/contract/bench-work.ts';
import { weightSdLbf } from '../../limb/index.ts';
import type { OpenShop } from '../../storage/context.ts';
import { readOrder } from '../orders/order-row.ts';
import { storyDrawIn } from '../orders/weight-story.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';
import { cautionsOf, sentenceOf } from './bench-words.ts';
import { logLinesOf } from './log-lines.ts';
import { type Bench, readBench } from './read-bench.ts';

type LastReading = NonNullable<BenchView['lastReading']>;

/** The last standing weighing at the job's draw, beside what a plan expected of it. */
function lastReadingOf({ order, rows, work }: Bench): LastReading | null {
  const drawIn = storyDrawIn(order);
  const last = rows.readings
    .filter(({ struck_reason }) => struck_reason === null)
    .flatMap((row) => {
      const lbf = weightAtAmoDraw(row.pulls, row.draw_reference, drawIn);
      return lbf === null ? [] : [{ id: row.id, lbf, at: row.weighed_at }];
    })
    .at(-1);
  if (last === undefined) return null;
  const followed = work?.replay.readings.find(({ id }) => id === last.id);
  return { ...last, expectedLbf: followed?.expectedLbf ?? null };
}

/** As far as it is known: followed under a plan, else what was weighed last. */
function nowOf(bench: Bench): BenchView['now'] {
  const { work } = bench;
  if (work !== null && bench.facts.fit?.ok === true && work.replay.known) {
    const { state, weighedSinceRemoval } = work.replay;
    return { lbf: state.weightLbf, sdLbf: weightSdLbf(state), weighed: weighedSinceRemoval };
  }
  const last = lastReadingOf(bench);
  const cut = work?.lastRemovalAt ?? null;
  if (last === null || (cut !== null && last.at <= cut)) return null;
  return { lbf: last.lbf, sdLbf: null, weighed: true };
}

/** What depends on a plan that still fits. */
function planned({ work, facts, advice }: Bench) {
  if (work === null || facts.fit?.ok !== true) {
    return { stopAtLbf: null, expected: null, effectiveness: null, bitesTaken: 0, tiller: null };
  }
  const { plan, replay, tiller, bitesTaken } = work;
  const { state, known } = replay;
  const { nowIn, upperTrack, lowerTrack } = tiller;
  const sdLbf = Math.hypot(weightSdLbf(state), advice.weighingSdLbf);
  return {
    stopAtLbf: advice.sandings?.toCome === null ? null : plan.stop_at_lbf,
    expected: known ? { lbf: state.weightLbf, sdLbf } : null,
    effectiveness: { mean: state.effectiveness, sd: Math.sqrt(state.effectivenessVar) },
    bitesTaken,
    tiller: { nowIn, targetIn: plan.tiller_target_in, upperTrack, lowerTrack },
  };
}

/** @see contract.bench.get */
export async function getBench(shop: OpenShop, orderId: string): Promise<BenchView> {
  const bench = await readBench(shop.read, await readOrder(shop.read, orderId), shop.now());
  const { order, plan, advice, hash, facts } = bench;
  return {
    orderId: order.id,
    advice: hash,
    step: advice.step,
    sentence: sentenceOf(advice.step, order.target_weight_lbf !== null),
    now: nowOf(bench),
    lastReading: lastReadingOf(bench),
    planId: plan?.id ?? null,
    targetLbf: order.target_weight_lbf,
    drawIn: order.target_draw_in,
    ...planned(bench),
    missing: [...facts.missing],
    log: await logLinesOf(shop, bench),
    cautions: cautionsOf(advice.step),
  };
}
