import type { ContractInputs } from '../../shared/contract/types.ts';

type Session = ContractInputs['finish']['lookAtSession'];

/** One clear coat on these bows, with everything left to be taken from the records. */
export const sessionOf = (finishSystemId: string, orderIds: readonly string[]): Session => ({
  finishSystemId,
  batchId: null,
  lotId: null,
  airReadingId: null,
  purpose: 'clear',
  sections: [],
  coats: 1,
  wetMil: null,
  bows: orderIds.map((orderId) => ({ orderId, scuffed: null, surfaceF: null, hungSince: null })),
  at: null,
});
