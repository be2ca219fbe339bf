import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import { decimal } from '../../../shared/measure.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';
import type { Frozen } from '../../limb-room/freeze.ts';
import { inLimbRoom } from '../../limb-room/limb-room.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow, WeightPlanRow } from '../../storage/tables.ts';
import { benchPolicyOf } from '../bench-policy/policy.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { allowanceFrom, effectivenessFrom } from '../learned/figures.ts';
import { closedJobs } from '../learned/jobs.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { storedReadings } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';
import { changedOf } from '../record.ts';
import { type FitRecords, latestGeometry, readFitRecords, tillerSuits } from './fit.ts';
import { whyNoPlan } from './may-plan.ts';
import { recordedFactsOf } from './recorded-facts.ts';
import { rulesOf } from './rules.ts';
import { inputJsonOf } from './stored.ts';

type Input = ContractInputs['plans']['accept'];
type Answer = ContractOutputs['plans']['accept'];

const conflict = (sentence: string, field: string, todo: string) =>
  new ShopError('CONFLICT', sentence, { [field]: todo });

async function refuseOddOrder(db: OpenShop['read'], order: OrderRow): Promise<void> {
  const why = whyNoPlan(order);
  if (why !== null) throw conflict(why, 'orderId', why);
  const [stop] = stopsOf(await openStops(db), order);
  if (stop === undefined) return;
  throw conflict(
    `A stop finding is open (${stop.place}): no work is planned on this bow.`,
    'findings',
    'Repair and look again first.',
  );
}

/** A plan for another target than the order's would not fit from its first moment on. */
function refuseOtherWish({ wish }: Input['input'], order: OrderRow): void {
  const { target_weight_lbf: lbf, target_draw_in: draw } = order;
  if (wish.targetLbf !== lbf || wish.drawIn !== draw) {
    const asked = `${decimal(lbf ?? 0)} lb @ ${decimal(draw ?? 0, 4)}"`;
    refuseField(
      wish.drawIn === draw ? 'input.wish.targetLbf' : 'input.wish.drawIn',
      `The order asks for ${asked}: plan for that, or agree the new target and put it on the order first.`,
    );
  }
  if (tillerSuits(wish.tillerTargetIn, order.tiller_target)) return;
  refuseField(
    'input.wish.tillerTargetIn',
    `The order asks for a tiller of "${order.tiller_target}": plan for that, or change it on the order first.`,
  );
}

/** What was weighed counts, not what somebody thinks: the plan starts from its weighing, lbf. */
const sameWeightLbf = 0.01;

async function refuseOtherWeight(db: OpenShop['read'], { input, ...rest }: Input): Promise<void> {
  const readings = await storedReadings(db, [rest.orderId]);
  const reading = readings.find(({ id }) => id === rest.readingId);
  const { drawIn, weightLbf } = input.wish;
  const weighed = reading && weightAtAmoDraw(reading.pulls, reading.draw_reference, drawIn);
  if (typeof weighed === 'number' && Math.abs(weighed - weightLbf) <= sameWeightLbf) return;
  const text = typeof weighed === 'number' ? `${decimal(weighed, 2)} lb` : 'no weight';
  refuseField(
    'input.wish.weightLbf',
    `The weighing it rests on says ${text} at ${decimal(drawIn, 4)}": a plan begins from what was weighed.`,
  );
}

/** The measurement and the weighing must still be the ones that count. */
function refuseOutdated(input: Input, order: OrderRow, records: FitRecords): void {
  const latest = latestGeometry(records.geometries, order.limb_set_id);
  if ((latest?.id ?? null) !== input.geometryId) {
    const sentence = 'The limbs were measured again in the meantime: begin again from the records.';
    throw new ShopError('STALE', sentence, { geometryId: sentence });
  }
  if (input.readingId === null) {
    throw conflict(
      'A plan needs a weighing of this bow, AMO at the draw of the target.',
      'readingId',
      'Weigh the bow first.',
    );
  }
  const reading = records.readings.find(({ id }) => id === input.readingId);
  if (reading?.struck_reason === null && reading.limb_set_id === order.limb_set_id) return;
  const sentence =
    'The weighing it rests on does not count any more: begin again from the records.';
  throw new ShopError('STALE', sentence, { readingId: sentence });
}

function refuseOddMethod(input: Input, { plan, drop }: Frozen): void {
  const [refusal] = plan.refusals;
  if (refusal !== undefined) {
    const sentence = `${planMethodLabels[input.method]} is refused. ${refusal.sentence}`;
    throw conflict(sentence, 'method', refusal.sentence);
  }
  if (!plan.reachesTarget) {
    const end = decimal(plan.afterFinishing.weightLbf);
    const sentence = `${planMethodLabels[input.method]} would end at ${end} lb, above the target: choose another way.`;
    throw conflict(sentence, 'method', sentence);
  }
  if (drop.level !== 'confirm' || input.confirmedBecause.length >= 3) return;
  refuseField('confirmedBecause', `${drop.sentence ?? 'This is a big drop.'} Give the reason.`);
}

function planColumns(input: Input, frozen: Frozen) {
  const { wish } = input.input;
  const { plan } = frozen;
  const [low, high] = plan.afterFinishing.bandLbf;
  return {
    method: input.method,
    geometry_id: input.geometryId,
    reading_id: input.readingId,
    draw_in: wish.drawIn,
    weight_lbf: wish.weightLbf,
    weight_sd_lbf: wish.weightSdLbf,
    target_lbf: wish.targetLbf,
    reserve_lbf: wish.reserveLbf,
    stop_at_lbf: plan.stopAtLbf,
    forecast_lbf: plan.afterFinishing.weightLbf,
    forecast_low_lbf: low,
    forecast_high_lbf: high,
    tiller_target_in: wish.tillerTargetIn,
    sanding: wish.sanding,
    allowance_mean_thou: wish.allowanceMeanThou,
    allowance_sd_thou: wish.allowanceSdThou,
    effectiveness_mean: wish.effectivenessMean,
    effectiveness_sd: wish.effectivenessSd,
    drop_per_thou: frozen.dropPerThou,
    slope_lbf_per_in: frozen.slopeLbfPerIn,
    brace_lbf_per_in: frozen.braceLbfPerIn,
    method_json: JSON.stringify(plan),
    response_json: JSON.stringify(frozen.response),
    confirmed_because: input.confirmedBecause,
  };
}

/** How many closed jobs the figures rest on; none where a person changed them by hand. */
async function jobsBehind(db: OpenShop['read'], { bow, wish }: Input['input']) {
  const jobs = await closedJobs(db);
  const policy = await benchPolicyOf(db);
  const of = { construction: bow.construction, sanding: wish.sanding };
  const allowance = allowanceFrom(jobs, of, policy);
  const effectiveness = effectivenessFrom(jobs, bow.section);
  return {
    allowance_jobs: allowance.mean === wish.allowanceMeanThou ? allowance.jobs : 0,
    effectiveness_jobs: effectiveness.mean === wish.effectivenessMean ? effectiveness.jobs : 0,
  };
}

async function nextVersion(trx: CommandTransaction, orderId: string): Promise<number> {
  const { last } = await trx.db
    .selectFrom('weight_plan')
    .select((eb) => eb.fn.max('version').as('last'))
    .where('order_id', '=', orderId)
    .executeTakeFirstOrThrow();
  return Number(last ?? 0) + 1;
}

async function recordPlan(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: Input,
  frozen: Frozen,
): Promise<WeightPlanRow> {
  const order = await readOrder(trx.db, input.orderId, input.rowVersion);
  trx.about({ orderId: order.id, bowId: order.bow_id });
  await refuseOddOrder(trx.db, order);
  refuseOtherWish(input.input, order);
  const records = await readFitRecords(trx.db, order);
  refuseOutdated(input, order, records);
  await refuseOtherWeight(trx.db, input);
  const { bow } = records;
  if (bow === null) throw new ShopError('CONFLICT', 'The order has no bow by now.');
  const limbSet = records.limbSets.find(({ id }) => id === order.limb_set_id) ?? null;
  const row = await trx.insert('weight_plan', {
    id: ctx.newId(),
    order_id: order.id,
    bow_id: bow.id,
    limb_set_id: order.limb_set_id,
    version: await nextVersion(trx, order.id),
    ...planColumns(input, frozen),
    ...(await jobsBehind(trx.db, input.input)),
    input_json: inputJsonOf(input.input, recordedFactsOf(bow, limbSet)),
    accepted_at: trx.at,
    person_id: ctx.actor.personId,
    struck_reason: null,
  });
  // Another screen that plans the same bow is told.
  await trx.update('shop_order', order.id, order.row_version, {});
  return row;
}

const planLine = (row: WeightPlanRow, input: Input) => ({
  kind: 'weight-plan',
  summary: `Weight plan ${row.version} accepted: ${planMethodLabels[input.method]}, ${decimal(row.weight_lbf)} lb to ${decimal(row.target_lbf)} lb @ ${decimal(row.draw_in, 4)}", stop at ${decimal(row.stop_at_lbf)} lb`,
  reason: input.confirmedBecause === '' ? null : input.confirmedBecause,
});

/** @see contract.plans.accept */
export async function acceptPlan(ctx: ShopContext, input: Input): Promise<Answer> {
  // An order that does not exist needs no reckoning.
  await readOrder(ctx.read, input.orderId);
  // Reckoned before the transaction: no mechanics while the database waits.
  const rules = rulesOf(await benchPolicyOf(ctx.read), input.input);
  const what = { input: input.input, method: input.method, rules };
  const frozen = await inLimbRoom({ kind: 'freeze', what });
  return runCommand(ctx, { id: input.commandId, name: 'plans.accept' }, async (trx) => {
    refuseOddMethod(input, frozen);
    const row = await recordPlan(trx, ctx, input, frozen);
    await note(trx, ctx, row.order_id, planLine(row, input));
    return { ...changedOf(row), version: row.version };
  });
}
