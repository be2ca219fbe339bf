import { newCommandId } from './test-shop.ts';
import { reason } from './undo-preparing.ts';
import type { UndoShop } from './undo-shop.ts';

/** A weighed bow with its target, and the plan that its records make. */
async function planned(kit: UndoShop) {
  await kit.place('arrived');
  await kit.flow.weigh(kit.scaleId, 'arrival', 52);
  const start = await kit.client.plans.start({ orderId: kit.orderId });
  return {
    orderId: kit.orderId,
    rowVersion: start.about.rowVersion ?? 0,
    input: start.input,
    method: 'narrowing' as const,
    geometryId: start.geometry?.id ?? null,
    readingId: start.reading?.id ?? null,
    confirmedBecause: '',
  };
}

/** Weight plans taken back. */
export const undoCasesPlans = {
  'plans.accept': async (kit: UndoShop) => {
    const plan = await planned(kit);
    return (commandId: string) => kit.client.plans.accept({ commandId, ...plan });
  },
  'plans.strikeOut': async (kit: UndoShop) => {
    const plan = await planned(kit);
    const { id, rowVersion } = await kit.client.plans.accept({
      commandId: newCommandId(),
      ...plan,
    });
    return (commandId: string) => kit.client.plans.strikeOut({ commandId, id, rowVersion, reason });
  },
};
