import type { ForecastJob, UntoldJob } from '../../../shared/contract/learned.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { decimal, difference } from '../../../shared/measure.ts';
import { planMethod, sandings } from '../../../shared/weight-plan.ts';
import type { OpenShop } from '../../storage/context.ts';
import { benchPolicyOf } from '../bench-policy/policy.ts';
import { bowLine } from '../bows/bow-line.ts';
import { dayOf } from '../day.ts';
import { arrivalWeightOf, bitesOf, endWeightOf, forecastOfTaken } from './closed-job.ts';
import { allowanceFrom, effectivenessFrom, usualAllowance, usualEffectiveness } from './figures.ts';
import { type ClosedJob, type Construction, closedJobs } from './jobs.ts';
import { strokeFigureFrom, strokeJobs } from './stroke-figure.ts';

/** What a band promises. */
const promisedPart = 0.8;

function headOf({ order, plan, bow, construction }: ClosedJob) {
  return {
    orderId: order.id,
    orderNumber: order.number,
    closedOn: dayOf(order.stage_since),
    bowName: bowLine(bow),
    construction,
    method: planMethod.parse(plan.method),
  };
}

/** Why a closed job says nothing of its forecast; null where it does. */
export function untoldJobOf(job: ClosedJob): UntoldJob | null {
  if (endWeightOf(job.rows) !== null) return null;
  const why = `It was not weighed after sanding at the plan's draw of ${decimal(job.plan.draw_in, 4)} in AMO.`;
  return { ...headOf(job), why };
}

/** One closed job as the owner reads it; null where it was never weighed after sanding. */
export function forecastJobOf(job: ClosedJob): ForecastJob | null {
  const { plan, rows } = job;
  const measuredLbf = endWeightOf(rows);
  if (measuredLbf === null) return null;
  const arrivalLbf = arrivalWeightOf(rows);
  const bites = bitesOf(rows);
  const { lbf: forecastLbf, bandLbf } = forecastOfTaken(plan, rows);
  return {
    ...headOf(job),
    biteMethods: [...new Set(bites.map(({ method }) => method))],
    bites: bites.length,
    weighings: rows.readings.filter(({ struck_reason }) => struck_reason === null).length,
    drawIn: plan.draw_in,
    arrivalLbf,
    targetLbf: plan.target_lbf,
    forecastLbf,
    bandLbf,
    measuredLbf,
    isInside: measuredLbf >= bandLbf[0] && measuredLbf <= bandLbf[1],
    measuredDropLbf: difference(arrivalLbf, measuredLbf),
    forecastDropLbf: difference(arrivalLbf, forecastLbf),
    allowanceThou: job.allowanceThou,
    sanding: job.sanding,
    effectiveness: job.effectiveness,
  };
}

/** What a hundred strokes take on bows of one construction; empty where no closed job tells. */
function strokesLine(closed: readonly ClosedJob[], construction: Construction) {
  const jobs = strokeJobs(closed, construction);
  if (jobs === 0) return [];
  const figure = strokeFigureFrom(closed, construction);
  const aHundred = figure === null ? null : { mean: 100 * figure.mean, sd: 100 * figure.sd };
  return [{ construction, jobs, aHundred }];
}

/** @see contract.learned.forecastRecord */
export async function forecastRecord(
  shop: OpenShop,
): Promise<ContractOutputs['learned']['forecastRecord']> {
  const closed = await closedJobs(shop.read);
  const policy = await benchPolicyOf(shop.read);
  const jobs = closed.map(forecastJobOf).filter((job) => job !== null);
  const constructions = new Set(closed.map((job) => job.construction));
  return {
    jobs,
    untold: closed.map(untoldJobOf).filter((job) => job !== null),
    inside: jobs.filter(({ isInside }) => isInside).length,
    promisedPart,
    allowances: [...constructions].flatMap((construction) =>
      sandings.map((sanding) => ({
        construction,
        sanding,
        figure: allowanceFrom(closed, { construction, sanding }, policy),
        usual: usualAllowance(policy, sanding),
      })),
    ),
    strokes: [...constructions].flatMap((each) => strokesLine(closed, each)),
    effectiveness: (['measured', 'unknown'] as const).map((section) => ({
      section,
      figure: effectivenessFrom(closed, section),
      usual: usualEffectiveness(section),
    })),
  };
}
