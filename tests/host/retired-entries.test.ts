import { describe, expect, test } from 'vitest';
import type { Core } from '../../core/host/core.ts';
import { entryItems, entryKinds } from '../../shared/entries.ts';
import { type Door, httpDoor, messagePortDoor } from '../support/doors.ts';
import { oldNote } from '../support/old-note.ts';
import { recordRows } from '../support/table-rows.ts';
import { newCommandId, takeIn, testShop } from '../support/test-shop.ts';
import { Flow } from '../support/whole-flow.ts';

const doors: [string, (core: Core) => Promise<Door>][] = [
  ['http', httpDoor],
  ['message port', async (core) => messagePortDoor(core)],
];

const retired = entryItems.filter((item) => entryKinds[item].retired !== null);

test('what the finish room records is no entry any more', () => {
  const ofFinish = retired.filter((item) => /finish/.test(entryKinds[item].retired ?? ''));
  expect(ofFinish).toEqual([
    'last-grit',
    'finish-system',
    'air',
    'first-clear',
    'pot-life',
    'lots-in-date',
    'recoat-window',
    'coat',
    'string-and-flex',
    'safe-to-wrap',
  ]);
  expect(retired).not.toContain('lettering-applied');
  expect(retired).not.toContain('lettering-dry');
});

describe.each(doors)('over %s', (_name, open) => {
  test('every retired entry is refused for everybody, with the place where it is recorded now', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const door = await open(shop.core);
    const before = await recordRows(shop);
    for (const role of ['owner', 'office', 'bench'] as const) {
      const client = door.client(shop.as(role).actor.personId);
      for (const item of retired) {
        const { label, retired: where } = entryKinds[item];
        const written = client.entries.record({
          commandId: newCommandId(),
          orderId,
          item,
          outcome: 'ok',
          doneOn: '2026-03-02',
          note: 'by the sheet',
          ...(role === 'owner' ? { override: { reason: 'in a hurry' } } : {}),
        });
        await expect(written, item).rejects.toMatchObject({
          code: 'CONFLICT',
          message: `${label}: ${where}`,
        });
      }
    }
    expect(await recordRows(shop)).toEqual(before);
  });

  test('an old one may be struck out; undoing that gives back the same one of the same hour', async () => {
    const shop = await testShop();
    const flow = new Flow(shop, (await takeIn(shop)).id);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const note = await oldNote(flow, 'string-and-flex', 'two days at 70 F');
    const before = (await flow.order()).entries;
    const commandId = newCommandId();
    await client.entries.strikeOut({ commandId, ...note, reason: 'of another bow' });
    expect((await flow.order()).entries[0]?.struckReason).toBe('of another bow');
    await client.undo.undo({ commandId: newCommandId(), of: commandId });
    const [given] = (await flow.order()).entries;
    expect(given).toEqual({ ...before[0], rowVersion: given?.rowVersion });
  });
});
