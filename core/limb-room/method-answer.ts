import type { limbs } from '../../shared/bows.ts';
import type { LimbAnswer, MethodAnswer, OutlinePoint } from '../../shared/plan-answer.ts';
import {
  applyRemoval,
  type LimbProfile,
  type MethodPlan,
  type PlanBow,
  sizesOf,
} from '../limb/index.ts';

type LimbPlan = MethodPlan['upper'];

/** Points of the outline, inches apart. */
const everyIn = 0.5;

/** Widths and thickness along one limb, now and after the work. */
function outlineOf(profile: LimbProfile, plan: LimbPlan): OutlinePoint[] {
  const { lengthIn } = profile;
  const [now, then] = [sizesOf(profile), sizesOf(applyRemoval(profile, plan.removal))];
  const steps = Array.from({ length: Math.ceil(lengthIn / everyIn) }, (_, i) => i * everyIn);
  const stations = plan.stations.map(({ fromFadeIn }) => fromFadeIn);
  const places = [...new Set([...steps, ...stations, lengthIn])].sort((a, b) => a - b);
  return places.map((fromFadeIn) => {
    const [was, is] = [now(fromFadeIn), then(fromFadeIn)];
    return {
      fromFadeIn,
      presentWidthIn: { belly: was.bellyWidthIn, back: was.backWidthIn },
      newWidthIn: { belly: is.bellyWidthIn, back: is.backWidthIn },
      presentThicknessIn: was.thicknessIn,
      newThicknessIn: is.thicknessIn,
    };
  });
}

/** A method's plan as the contract carries it; outlines only where they are drawn. */
export function methodAnswerOf(bow: PlanBow, plan: MethodPlan, withOutline: boolean): MethodAnswer {
  const { aimLbf, ...rest } = plan;
  const limb = (name: (typeof limbs)[number]): LimbAnswer => {
    const { removal, ...figures } = plan[name];
    return {
      ...figures,
      removal: { ...removal, cuts: [...removal.cuts] },
      outline: withOutline ? outlineOf(bow.measured[name].profile, plan[name]) : [],
    };
  };
  return {
    ...rest,
    upper: limb('upper'),
    lower: limb('lower'),
    afterWork: { ...plan.afterWork, bandLbf: [...plan.afterWork.bandLbf] },
    afterFinishing: { ...plan.afterFinishing, bandLbf: [...plan.afterFinishing.bandLbf] },
    stopAtLbf: aimLbf,
  };
}
