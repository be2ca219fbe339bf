import { expect, test } from 'vitest';
import { chooseFinish } from '../../../../core/shop/finish/choose.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { strikeOutCoat } from '../../../../core/shop/finish/strike-coat.ts';
import { undoCommand } from '../../../../core/shop/undo/undo.ts';
import { finishKit, usableBatch } from '../../../support/finish-kit.ts';
import { newCommandId } from '../../../support/test-shop.ts';

test('a choice that coats rest on is not taken back, one that none rests on is', async () => {
  const kit = await finishKit();
  const { shop, systemId } = kit;
  const [bow, other] = [await kit.bow(), await kit.bow()];
  const again = async (orderId: string) => {
    const { chosen } = await orderFinishNow(shop.owner, orderId);
    const commandId = newCommandId();
    const rowVersion = chosen?.rowVersion ?? null;
    await chooseFinish(shop.owner, { commandId, orderId, finishSystemId: systemId, rowVersion });
    return commandId;
  };
  const first = await again(bow.orderId);
  const undo = (undoes: string) =>
    undoCommand(shop.owner, { commandId: newCommandId(), of: undoes });
  await kit.air();
  await kit.spray([bow, other], { batchId: await usableBatch(kit) });
  await expect(undo(first)).rejects.toThrow('The order has gone on since: Clear coat');
  await expect(undo(await again(bow.orderId))).rejects.toThrow(
    'has been coated with this finish by now',
  );
  const third = await kit.bow();
  await expect(undo(await again(third.orderId))).resolves.toBeTruthy();
  expect((await orderFinishNow(shop.owner, third.orderId)).chosen).not.toBeNull();
});

test('what was recorded before a coat stays while the coat of that bow stands', async () => {
  const kit = await finishKit();
  const { shop } = kit;
  const bows = [await kit.bow(), await kit.bow()] as const;
  const sanded: string[] = [];
  for (const bow of bows) {
    const { commandId } = await bow.sand();
    sanded.push(commandId);
  }
  await kit.air();
  await kit.spray(bows, { batchId: await usableBatch(kit) });
  const undo = (of = '') => undoCommand(shop.owner, { commandId: newCommandId(), of });
  for (const of of sanded) await expect(undo(of)).rejects.toThrow('has gone on since: Clear coat');
  const [coat] = (await orderFinishNow(shop.owner, bows[0].orderId)).coats;
  const struck = { id: coat?.id ?? '', rowVersion: 1, reason: 'only the other one was coated' };
  await strikeOutCoat(shop.owner, { commandId: newCommandId(), ...struck });
  await expect(undo(sanded[0])).resolves.toBeTruthy();
  await expect(undo(sanded[1])).rejects.toThrow('has gone on since: Clear coat');
});
