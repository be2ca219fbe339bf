import { decimal, inchFraction, weightAtDraw } from '../../../shared/measure.ts';
import type { LimbAnswer, MethodAnswer } from '../../../shared/plan-answer.ts';
import { type CutFace, planMethodLabels } from '../../../shared/weight-plan.ts';
import type { StripFacts } from '../../../shared/weight-strip.ts';
import type { WorkOrderPlan } from '../../papers/work-order-plan.ts';
import type { WeightPlanRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { methodOf } from '../plans/stored.ts';
import { markedFace } from './marked-face.ts';

/** A plan that stands, who accepted it, and whether it still fits the records. */
export interface PlanOnPaper {
  row: WeightPlanRow;
  acceptedBy: string;
  fit: { ok: boolean; why: string[] };
}

const limbNames = ['upper', 'lower'] as const;
const faces = ['back', 'belly'] as const;
/** Less than this is no cut, inches, and no thinning, thousandths. */
const leastIn = 0.0005;
const leastThou = 0.05;

const faceWords: Record<CutFace, string> = {
  both: 'both faces alike',
  back: 'on the back only',
  belly: 'on the belly only',
};

const inches = (value: number) => `${value.toFixed(3)}"`;
const off = (value: number) =>
  value < leastIn ? 'nothing' : `${value.toFixed(3)}" (${inchFraction(value, 64)})`;
const thou = (value: number) => `${value.toFixed(1)} thou`;

const isCut = ({ stations }: LimbAnswer) =>
  stations.some(({ offPerSideIn }) => offPerSideIn >= leastIn);

function methodText(plan: MethodAnswer): string {
  const label = planMethodLabels[plan.method];
  const cut = limbNames.find((name) => isCut(plan[name]));
  return cut === undefined ? label : `${label}, ${faceWords[plan[cut].removal.face]}`;
}

function factsOf(row: WeightPlanRow, plan: MethodAnswer): [string, string][] {
  const stop = `${row.stop_at_lbf.toFixed(1)} lb, of which sanding takes about ${plan.finishingTakesLbf.toFixed(1)} lb`;
  const tiller = inchFraction(row.tiller_target_in, 64);
  return [
    ['Method', methodText(plan)],
    ['Target', weightAtDraw(row.target_lbf, row.draw_in)],
    ['Stop cutting at', stop],
    ['Tiller', tiller === '0' ? 'even' : `${tiller}" upper less lower`],
    ['Sanding after it', row.sanding],
  ];
}

function cutsOf(plan: MethodAnswer): WorkOrderPlan['cuts'] {
  const face = markedFace(plan);
  return limbNames
    .filter((name) => isCut(plan[name]))
    .map((limb) => ({
      limb,
      rows: plan[limb].stations.map((station) => ({
        fromFade: `${decimal(station.fromFadeIn, 2)}"`,
        widthNow: inches(station.presentWidthIn[face]),
        offEachSide: off(station.offPerSideIn),
        offInAll: off(station.offTotalIn),
        newWidth: inches(station.newWidthIn[face]),
      })),
    }));
}

function facesOf(plan: MethodAnswer): WorkOrderPlan['faces'] {
  return limbNames.flatMap((limb) =>
    faces
      .filter((face) => plan[limb].offThou[face] >= leastThou)
      .map((face) => {
        const left = plan[limb].glassLeftIn[face];
        return {
          where: `${limb === 'upper' ? 'Upper' : 'Lower'}, ${face}`,
          off: thou(plan[limb].offThou[face]),
          glassLeft: left === null ? 'no glass' : thou(left * 1000),
        };
      }),
  );
}

const stopAtWeight =
  'This is the whole cut: work towards it bite by bite, weigh after each, and stop at the weight, not at the width.';

function notesOf(plan: MethodAnswer, cuts: WorkOrderPlan['cuts']): string[] {
  const untouched = limbNames.filter((name) => !isCut(plan[name]));
  const only =
    cuts.length === 1
      ? untouched.map((name) => `Nothing comes off the width of the ${name} limb.`)
      : [];
  if (plan.method === 'sanding') return ['Nothing is cut: sanding alone takes the weight.'];
  return [stopAtWeight, ...only];
}

/** What the bench works from. A plan that no longer fits gives no figures to cut by. */
export function workOrderPlan({ row, acceptedBy, fit }: PlanOnPaper): WorkOrderPlan {
  const plan = methodOf(row);
  const by = acceptedBy === '' ? '' : ` by ${acceptedBy}`;
  const title = `Plan ${row.version}, accepted ${dayOf(row.accepted_at)}${by}`;
  if (!fit.ok) {
    const doesNotFit = [
      `This plan does not fit any more: plan again, cut nothing by it.`,
      ...fit.why,
    ];
    return { title, facts: [], doesNotFit, cuts: [], faces: [], notes: [] };
  }
  const cuts = cutsOf(plan);
  return {
    title,
    facts: factsOf(row, plan),
    doesNotFit: [],
    cuts,
    faces: facesOf(plan),
    notes: notesOf(plan, cuts),
  };
}

/** What a fitting plan adds to the weight strip; both at the draw of the plan. */
export function stripOfPlan(
  plan: PlanOnPaper | null,
): Pick<StripFacts, 'stopBandLbf' | 'forecastLbf'> {
  if (plan === null || !plan.fit.ok) return { stopBandLbf: null, forecastLbf: null };
  const { row } = plan;
  return {
    stopBandLbf: [row.stop_at_lbf - row.reserve_lbf, row.stop_at_lbf],
    forecastLbf: [row.forecast_low_lbf, row.forecast_lbf, row.forecast_high_lbf],
  };
}
