import { limbs } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { PlanSetting } from './setting.ts';
import type { MethodPlan } from './types.ts';

/** A forecast this near what was asked is that, lbf. */
export const weightWithinLbf = 0.05;

/** What a person should know before choosing this way, one sentence each. */
export function notesOf({ bow, wish }: PlanSetting, plan: Omit<MethodPlan, 'notes'>): string[] {
  const notes: string[] = [];
  const { tiller, strain, afterFinishing } = plan;
  if (afterFinishing.weightLbf < wish.targetLbf - weightWithinLbf) {
    const below = decimal(wish.targetLbf - afterFinishing.weightLbf);
    notes.push(`Finishing is expected to end ${below} lb under the target.`);
  }
  if (!tiller.reached) {
    const [ends, wanted] = [inchFraction(tiller.afterIn, 64), inchFraction(tiller.targetIn, 64)];
    notes.push(`Tiller would end at ${ends} in, not at ${wanted} in.`);
  }
  const worst = strain.hinges.reduce((most, { risePart }) => Math.max(most, risePart), 0);
  const hinge = strain.hinges.find(({ risePart }) => risePart === worst);
  if (hinge) {
    const where = `${decimal(hinge.fromFadeIn, 1)} in from the fade of the ${hinge.limb} limb`;
    notes.push(`Strain rises by ${decimal(100 * worst, 0)} % ${where}: watch for a hinge.`);
  }
  const glass = limbs.some((limb) => plan[limb].glassLeftIn.belly ?? plan[limb].glassLeftIn.back);
  if (glass && bow.made === null) {
    notes.push('Nobody knows the glass when made: what is on the bow now counts as that.');
  }
  return notes;
}
