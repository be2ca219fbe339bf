import { type MethodAnswer, methodAnswer } from '../../../shared/plan-answer.ts';
import { type PlanInput, planInput } from '../../../shared/plan-input.ts';
import { planResponse } from '../../../shared/plan-record.ts';
import { z } from '../../../shared/zod.ts';
import type { BowResponse } from '../../limb/index.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { WeightPlanRow } from '../../storage/tables.ts';

/** Facts of bow, limbs and wish in words, as they were when the plan was accepted. */
const recordedFacts = z.record(z.string().max(120), z.string().max(300));
export type RecordedFacts = z.infer<typeof recordedFacts>;

/** How input_json is laid out. */
const storedInput = z.object({ input: planInput, asRecorded: recordedFacts });

const storedInputOf = (row: Pick<WeightPlanRow, 'input_json'>) =>
  storedInput.parse(JSON.parse(row.input_json));

export function inputJsonOf(input: PlanInput, asRecorded: RecordedFacts): string {
  return JSON.stringify({ input, asRecorded });
}

export function inputOf(row: Pick<WeightPlanRow, 'input_json'>): PlanInput {
  return storedInputOf(row).input;
}

export function asRecordedOf(row: Pick<WeightPlanRow, 'input_json'>): RecordedFacts {
  return storedInputOf(row).asRecorded;
}

export function methodOf(row: Pick<WeightPlanRow, 'method_json'>): MethodAnswer {
  return methodAnswer.parse(JSON.parse(row.method_json));
}

export function responseOf(row: Pick<WeightPlanRow, 'response_json'>): BowResponse {
  return planResponse.parse(JSON.parse(row.response_json));
}

/** Plans of an order, newest first, the struck-out ones too. */
export function storedPlans(db: OpenShop['read'], orderId: string): Promise<WeightPlanRow[]> {
  return db
    .selectFrom('weight_plan')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('version', 'desc')
    .execute();
}

/** The newest accepted plan that stands; whether it still fits is another question. */
export async function standingPlan(
  db: OpenShop['read'],
  orderId: string,
): Promise<WeightPlanRow | null> {
  const plans = await storedPlans(db, orderId);
  return plans.find(({ struck_reason }) => struck_reason === null) ?? null;
}
