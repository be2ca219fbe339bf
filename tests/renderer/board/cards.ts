import type { OrderCard } from '../../../shared/contract/order-card.ts';

/** A card in work, with what a test is about laid over it. */
export function cardWith(part: Partial<OrderCard> = {}): OrderCard {
  return {
    id: 'order-1',
    number: '26-0001',
    rowVersion: 1,
    customerId: 'customer-1',
    customerName: 'Hale',
    bowId: 'bow-1',
    bowLine: 'longbow 66" take-down, Fernhollow Kestrel',
    services: ['reduce-weight'],
    route: ['requested', 'in-mail', 'arrived', 'agreed', 'weight-work', 'packed', 'shipped'],
    stage: 'requested',
    stageSince: '2026-11-20T10:00:00.000Z',
    goingHome: null,
    targetWeightLbf: 45,
    targetDrawIn: 28,
    promisedOn: null,
    estimateCents: null,
    weights: { arrivalLbf: null, nowLbf: null, targetLbf: 45, drawIn: 28 },
    underTarget: null,
    hold: null,
    openStops: 0,
    waitingConsents: 0,
    ...part,
  };
}

export const hold = {
  id: 'hold-1',
  kind: 'material' as const,
  reason: 'waits for leather',
  since: '2026-11-20T10:00:00.000Z',
  remindOn: null,
  storageFeeOn: null,
  abandonedOn: null,
  releasedAt: null,
  rowVersion: 1,
};
