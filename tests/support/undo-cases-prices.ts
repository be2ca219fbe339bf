import { newCommandId } from './test-shop.ts';
import { orderAt, reason } from './undo-preparing.ts';
import type { UndoShop } from './undo-shop.ts';

type Act = (commandId: string) => Promise<unknown>;

const listed = {
  name: 'Refinish, two coats',
  service: 'strip-refinish' as const,
  priceCents: 18_000,
  minutes: 240,
  taxable: true,
};
const freeLine = {
  kind: 'material' as const,
  what: 'Overlay horn',
  quantity: 2,
  unitCents: 1_250,
  discountBp: null,
  taxable: true,
  minutes: 0,
};
const deposit = {
  kind: 'deposit' as const,
  method: 'cheque' as const,
  cents: 12_000,
  receivedOn: '2026-03-02',
  reference: 'no. 118',
  note: '',
};

const list = ({ client }: UndoShop) =>
  client.prices.addService({ commandId: newCommandId(), ...listed });

const onOrder = async (kit: UndoShop, what = freeLine.what) => {
  const { id: orderId, rowVersion } = await orderAt(kit);
  const commandId = newCommandId();
  const given = { ...freeLine, what, answerId: null };
  return kit.client.prices.addLine({ commandId, orderId, rowVersion, ...given });
};

const paid = ({ client, orderId }: UndoShop) =>
  client.prices.recordPayment({ commandId: newCommandId(), orderId, ...deposit });

/** Price list, price and payments, each command done once in a shop of its own. */
export const undoCasesPrices: Record<string, (kit: UndoShop) => Promise<Act>> = {
  'prices.addService':
    async ({ client }) =>
    (commandId) =>
      client.prices.addService({ commandId, ...listed }),
  'prices.editService': async (kit) => {
    const { id, rowVersion } = await list(kit);
    const changed = { ...listed, priceCents: 20_000, active: false };
    return (commandId) => kit.client.prices.editService({ commandId, id, rowVersion, ...changed });
  },
  'prices.arrangeServices': async (kit) => {
    await kit.client.prices.addTypical({ commandId: newCommandId() });
    const all = await kit.client.prices.services();
    const ids = all.map(({ id }) => id).toReversed();
    return (commandId) => kit.client.prices.arrangeServices({ commandId, ids });
  },
  'prices.addTypical':
    async ({ client }) =>
    (commandId) =>
      client.prices.addTypical({ commandId }),
  'prices.addFromList': async (kit) => {
    const { id } = await list(kit);
    return async (commandId) => {
      const { id: orderId, rowVersion } = await orderAt(kit);
      return kit.client.prices.addFromList({ commandId, orderId, rowVersion, serviceIds: [id] });
    };
  },
  'prices.addLine': async (kit) => async (commandId) => {
    const { id: orderId, rowVersion } = await orderAt(kit);
    const given = { ...freeLine, answerId: null };
    return kit.client.prices.addLine({ commandId, orderId, rowVersion, ...given });
  },
  'prices.editLine': async (kit) => {
    const { id, rowVersion } = await onOrder(kit);
    const changed = { ...freeLine, unitCents: 1_500 };
    return (commandId) => kit.client.prices.editLine({ commandId, id, rowVersion, ...changed });
  },
  'prices.removeLine': async (kit) => {
    const { id, rowVersion } = await onOrder(kit);
    return (commandId) => kit.client.prices.removeLine({ commandId, id, rowVersion });
  },
  'prices.arrangeLines': async (kit) => {
    const first = await onOrder(kit);
    const second = await onOrder(kit, 'String');
    return async (commandId) => {
      const { id: orderId, rowVersion } = await orderAt(kit);
      const ids = [second.id, first.id];
      return kit.client.prices.arrangeLines({ commandId, orderId, rowVersion, ids });
    };
  },
  'prices.recordPayment':
    async ({ client, orderId }) =>
    (commandId) =>
      client.prices.recordPayment({ commandId, orderId, ...deposit }),
  'prices.strikeOutPayment': async (kit) => {
    const { id, rowVersion } = await paid(kit);
    return (commandId) => kit.client.prices.strikeOutPayment({ commandId, id, rowVersion, reason });
  },
};
