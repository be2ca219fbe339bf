import type { MethodAnswer } from '../../../shared/plan-answer.ts';
import type { TemplateFace } from '../../limb/template.ts';

/** Side cuts that narrow one face only are marked on that face; any other on the back. */
export function markedFace(plan: Pick<MethodAnswer, 'upper' | 'lower'>): TemplateFace {
  const onBelly = [plan.upper, plan.lower].some(
    ({ removal }) => removal.cuts.length > 0 && removal.face === 'belly',
  );
  return onBelly ? 'belly' : 'back';
}
