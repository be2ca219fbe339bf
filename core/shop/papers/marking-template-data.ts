import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { ShopError } from '../../../shared/errors.ts';
import { inchFraction, weightAtDraw } from '../../../shared/measure.ts';
import type { LimbAnswer } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';
import { type TemplateFace, templateOffsets } from '../../limb/template.ts';
import type { MarkingLimb, MarkingTemplateData } from '../../papers/marking-template-data.ts';
import { dayOf } from '../day.ts';
import { inputOf, methodOf } from '../plans/stored.ts';
import { markedFace } from './marked-face.ts';
import type { PlanOnPaper } from './work-order-plan-data.ts';

const limbNames = ['upper', 'lower'] as const;

function refuse(sentence: string): never {
  throw new ShopError('CONFLICT', sentence, { plan: sentence });
}

const isCut = ({ stations }: LimbAnswer) => stations.some(({ offPerSideIn }) => offPerSideIn > 0);

function limbOf(
  limb: (typeof limbNames)[number],
  answer: LimbAnswer,
  input: PlanInput,
  face: TemplateFace,
): MarkingLimb {
  const both = (widthIn: number) => ({ left: widthIn / 2, right: widthIn / 2 });
  const stations = answer.stations.map((station) => ({
    fromFadeIn: station.fromFadeIn,
    presentIn: both(station.presentWidthIn[face]),
    newIn: both(station.newWidthIn[face]),
  }));
  // A plan may begin its cuts nearer the fade than usual: where they begin is the shop's figure.
  const blendIn = Math.min(2, input.choices.cutShape.fromIn);
  const template = templateOffsets({ limb, face, stations }, { blendIn });
  return { ...template, lengthIn: input.bow[limb].lengthIn };
}

/**
 * What is marked on the limbs by the accepted plan. Only widths are measured, so each half is half
 * the width.
 * @throws ShopError CONFLICT without a plan, with one that no longer fits or that cuts no width
 */
export function markingTemplateData(
  order: OrderDetail,
  accepted: PlanOnPaper | null,
  choice: Pick<MarkingTemplateData, 'format' | 'copy' | 'printedAt'>,
): MarkingTemplateData {
  if (accepted === null)
    refuse('No weight plan is accepted for this order. Accept one, then print.');
  const { row, fit } = accepted;
  if (!fit.ok) {
    refuse(
      `Plan ${row.version} does not fit any more: ${fit.why.join(' ')} Plan again, then print.`,
    );
  }
  const plan = methodOf(row);
  const input = inputOf(row);
  const label = planMethodLabels[plan.method];
  const cut = limbNames.filter((name) => isCut(plan[name]));
  if (cut.length === 0) {
    refuse(
      `Plan ${row.version} (${label.toLowerCase()}) takes no width: there is nothing to mark.`,
    );
  }
  const face = markedFace(plan);
  return {
    ...choice,
    number: order.card.number,
    bowLine: order.card.bowLine,
    plan: {
      version: row.version,
      acceptedOn: dayOf(row.accepted_at),
      words: `${label} to ${weightAtDraw(row.target_lbf, row.draw_in)}, tiller ${inchFraction(row.tiller_target_in)}"`,
    },
    limbs: cut.map((name) => limbOf(name, plan[name], input, face)),
    uncut: limbNames
      .filter((name) => !cut.includes(name))
      .map((name) => `Nothing comes off the width of the ${name} limb.`),
  };
}
