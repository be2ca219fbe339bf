import { recordGrit } from '../../../core/shop/finish/sandings.ts';
import { readSurface } from '../../../core/shop/finish/surfaces.ts';
import { countLot } from '../../../core/shop/stores/corrections.ts';
import { finishKit, usableBatch } from '../../support/finish-kit.ts';
import { newCommandId, type TestShop } from '../../support/test-shop.ts';

/** Two bows of one spray session from a batch of the stores, and what was read in the room. */
export async function coatedBows(shop: TestShop): Promise<void> {
  const kit = await finishKit(shop);
  const bows = [await kit.bow(), await kit.bow()];
  for (const { orderId } of bows) {
    await recordGrit(shop.owner, {
      commandId: newCommandId(),
      orderId,
      parts: [{ section: 'upper-limb', substrate: 'glass' }],
      grit: { grit: 320, scale: 'P' },
      strokes: 40,
      wiped: true,
      isLast: true,
      note: '',
      at: null,
    });
  }
  await kit.air();
  const batchId = await usableBatch(kit);
  const coated = await kit.spray(bows, {
    batchId,
    override: { reason: 'only one section sanded' },
  });
  if (coated.outcome !== 'recorded') throw new Error(JSON.stringify(coated));
  const orderIds = bows.map(({ orderId }) => orderId);
  await readSurface(shop.owner, { commandId: newCommandId(), orderIds, surfaceF: 71, at: null });
  const { id: lotId } = await shop.owner.read
    .selectFrom('lot')
    .select('id')
    .where('consumable_id', '=', kit.thinnerId)
    .executeTakeFirstOrThrow();
  const counted = { lotId, quantity: 950, unit: 'mL', reason: 'spilt' } as const;
  await countLot(shop.owner, { commandId: newCommandId(), ...counted });
}
