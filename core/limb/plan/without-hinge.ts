import { planMethod } from './method.ts';
import type { PlanSetting } from './setting.ts';
import type { MethodPlan, TotalDrop } from './types.ts';
import { type CutShape, refuseOddShape } from './work.ts';

/** A narrowing whose full cut ends elsewhere, and makes no hinge. */
export interface WithoutHinge {
  cutShape: CutShape;
  plan: MethodPlan;
}

/** Parts of the limb at which the full cut may end. */
const ends = [
  0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9,
];

function fits({ bow }: PlanSetting, shape: CutShape): boolean {
  try {
    refuseOddShape(shape, bow.measured);
    return true;
  } catch {
    return false;
  }
}

/** The shape nearest to the one asked for that makes no hinge; null where none does. */
export function narrowedWithoutHinge(setting: PlanSetting, drop: TotalDrop): WithoutHinge | null {
  const { cutShape } = setting.options;
  const away = (part: number) => Math.abs(part - cutShape.carriedPart);
  const shapes = ends
    .filter((part) => away(part) > 1e-9)
    .sort((a, b) => away(a) - away(b) || b - a)
    .map((carriedPart) => ({ ...cutShape, carriedPart }))
    .filter((shape) => fits(setting, shape));
  for (const shape of shapes) {
    const options = { ...setting.options, cutShape: shape };
    const { status, value } = planMethod({ ...setting, options }, 'narrowing', drop);
    if (status !== 'converged') continue;
    const clean = value.strain.hinges.length === 0 && value.refusals.length === 0;
    if (clean && value.reachesTarget) return { cutShape: shape, plan: value };
  }
  return null;
}
