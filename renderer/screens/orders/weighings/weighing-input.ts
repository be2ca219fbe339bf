import { readings } from '../../../../shared/contract/readings.ts';
import type { ContractRequests } from '../../../../shared/contract/types.ts';
import { inputErrors } from '../../../parts/input-schema.ts';
import { givenPulls, isBlank } from './live-weights.ts';
import type { WeighingFields } from './weighing-fields.ts';

type Input = Omit<ContractRequests['readings']['add'], 'commandId'>;

/** What is wrong, by the contract's paths. */
export function weighingErrors(orderId: string, fields: WeighingFields): Record<string, string> {
  const pulls = fields.pulls
    .filter((pull) => !isBlank(pull))
    .map(({ drawIn, forceLbf }) => ({ drawIn, forceLbf }));
  const rigZeroLbf = fields.rigZeroLbf ?? 0;
  const errors = inputErrors(readings.add, { orderId, ...fields, rigZeroLbf, pulls });
  return fields.scaleId === null ? { ...errors, scaleId: 'Choose the scale.' } : errors;
}

/** What to send, or null while something is wrong. */
export function weighingInput(orderId: string, fields: WeighingFields): Input | null {
  const { scaleId, braceIn } = fields;
  const isWrong = Object.keys(weighingErrors(orderId, fields)).length > 0;
  if (isWrong || scaleId === null || braceIn === null) return null;
  const pulls = givenPulls(fields.pulls);
  return { orderId, ...fields, scaleId, braceIn, rigZeroLbf: fields.rigZeroLbf ?? 0, pulls };
}
