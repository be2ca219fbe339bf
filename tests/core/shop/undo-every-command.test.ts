import { expect, test } from 'vitest';
import { neverUndone, undoable } from '../../../core/shop/undo/undoable.ts';
import { procedures } from '../../support/contract-walk.ts';
import { recordRows } from '../../support/table-rows.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { undoCases } from '../../support/undo-cases.ts';
import { undoShop } from '../../support/undo-shop.ts';

const commands = procedures.filter((procedure) => procedure.meta.kind === 'command');
const names = commands.map((procedure) => procedure.name).sort();

test('every command says whether it can be taken back, and nothing else does', () => {
  expect(Object.keys(undoable).sort()).toEqual(names);
});

test('what cannot be taken back says why, in a sentence', () => {
  for (const name of names) {
    const why = neverUndone(name);
    if (why !== null) expect(why, name).toMatch(/^[A-Z].{15,}\.$/);
  }
  expect(neverUndone('orders.edit')).toBeNull();
  expect(neverUndone('no.suchCommand')).not.toBeNull();
});

test('every command that can be taken back is tried below', () => {
  const open = names.filter((name) => neverUndone(name) === null);
  expect(Object.keys(undoCases).sort()).toEqual(open);
});

test.each(Object.entries(undoCases))('%s is taken back to the last row', async (name, prepare) => {
  const kit = await undoShop();
  const act = await prepare(kit);
  const before = await recordRows(kit.shop);
  const commandId = newCommandId();
  const result = await act(commandId);
  expect((result as { outcome?: string }).outcome ?? 'done').not.toMatch(/refused|incomplete/);
  expect(await recordRows(kit.shop)).not.toEqual(before);
  const [item] = await kit.client.undo.recent({ of: commandId });
  expect(item).toMatchObject({ commandId, canUndo: true, why: null, undoneAt: null });
  expect(item?.effect).not.toBe('');

  const undone = await kit.client.undo.undo({ commandId: newCommandId(), of: commandId });

  expect(undone).toMatchObject({ of: commandId, what: item?.what });
  expect(await recordRows(kit.shop)).toEqual(before);
  const { read } = kit.shop.core.shop();
  const { name: kept } = await read
    .selectFrom('command')
    .select('name')
    .where('id', '=', commandId)
    .executeTakeFirstOrThrow();
  expect(kept).toBe(name);
});
