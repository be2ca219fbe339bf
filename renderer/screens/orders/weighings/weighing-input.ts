import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import { readings } from '../../../../shared/contract/readings.ts';
import type { ContractRequests } from '../../../../shared/contract/types.ts';
import { inputErrors } from '../../../parts/input-schema.ts';
import { givenPulls, isBlank } from './live-weights.ts';
import type { WeighingFields } from './weighing-fields.ts';

type Input = Omit<ContractRequests['readings']['add'], 'commandId'>;

type Weighed = Pick<OrderDetail, 'card' | 'cameAs' | 'limbSet'>;

const subjectOf = (order: Weighed) => ({
  orderId: order.card.id,
  limbSetId: order.limbSet?.id ?? null,
});

/** What is wrong, by the contract's paths. */
export function weighingErrors(order: Weighed, fields: WeighingFields): Record<string, string> {
  const subject = subjectOf(order);
  const pulls = fields.pulls
    .filter((pull) => !isBlank(pull))
    .map(({ drawIn, forceLbf }) => ({ drawIn, forceLbf }));
  const rigZeroLbf = fields.rigZeroLbf ?? 0;
  const errors = inputErrors(readings.add, { ...subject, ...fields, rigZeroLbf, pulls });
  if (order.cameAs === 'limbs-only' && fields.riserNote.trim() === '') {
    errors.riserNote = 'Say which riser they were weighed on.';
  }
  return fields.scaleId === null ? { ...errors, scaleId: 'Choose the scale.' } : errors;
}

/** What to send, or null while something is wrong. */
export function weighingInput(order: Weighed, fields: WeighingFields): Input | null {
  const { scaleId, braceIn } = fields;
  const isWrong = Object.keys(weighingErrors(order, fields)).length > 0;
  if (isWrong || scaleId === null || braceIn === null) return null;
  const pulls = givenPulls(fields.pulls);
  return {
    ...subjectOf(order),
    ...fields,
    scaleId,
    braceIn,
    rigZeroLbf: fields.rigZeroLbf ?? 0,
    pulls,
  };
}
