import { expect, test } from 'vitest';
import { comparePaper } from '../../../../core/shop/papers/compare.ts';
import { listPapers } from '../../../../core/shop/papers/issued.ts';
import { issuePaper } from '../../../../core/shop/papers/papers.ts';
import { openLot } from '../../../../core/shop/stores/lots.ts';
import { received, stocked } from '../../../support/stocked-shop.ts';
import { newCommandId, testShop } from '../../../support/test-shop.ts';
import { textOf } from '../../papers/read-back.ts';

const about = { orderId: null, format: 'label', copy: 'bench', action: 'printed' } as const;

test('shelf and lot labels come out of the records and are listed as papers of no order', async () => {
  const { owner } = await testShop();
  const { id } = await stocked(owner, {
    name: 'Paper, open coat',
    category: 'abrasive',
    unit: 'sheet',
    grit: { grit: 320, scale: 'CAMI' },
    shelf: 'Rack 2',
    openedDays: 90,
    hazards: ['sanding-dust'],
  });
  const lotId = await received(owner, id, { quantity: 50, unit: 'sheet' });
  const shelf = { commandId: newCommandId(), kind: 'shelf-label', aboutId: id, ...about } as const;
  const file = await issuePaper(owner, shelf);
  expect(file.name).toBe('S0001 shelf label.pdf');
  const words = await textOf(new Uint8Array(await file.arrayBuffer()));
  expect(words).toMatch(/CAMI 320 \(36 [µμ]m\)/);
  expect(words).toContain('Sanding dust: see its data sheet');

  const label = { commandId: newCommandId(), kind: 'lot-label', aboutId: lotId, ...about } as const;
  const lot = await textOf(new Uint8Array(await (await issuePaper(owner, label)).arrayBuffer()));
  expect(lot).toContain('Use by 2026-09-30');
  expect(lot).toContain('keeps 90 days');

  const { papers } = await listPapers(owner, { kind: null, orderNumber: '', page: 0 });
  expect(
    papers.map(({ kind, aboutId, orderId, orderLine, outdated }) => ({
      kind,
      aboutId,
      orderId,
      orderLine,
      outdated,
    })),
  ).toEqual([
    {
      kind: 'lot-label',
      aboutId: lotId,
      orderId: null,
      orderLine: 'Paper, open coat, lot R-118',
      outdated: false,
    },
    {
      kind: 'shelf-label',
      aboutId: id,
      orderId: null,
      orderLine: 'Paper, open coat',
      outdated: false,
    },
  ]);
  const [printed] = papers;
  expect(await comparePaper(owner, { id: printed?.id ?? '' })).toEqual({ outcome: 'same' });
  const opening = { commandId: newCommandId(), id: lotId, rowVersion: 1, openedOn: '2026-03-02' };
  await openLot(owner, opening);
  expect(await comparePaper(owner, { id: printed?.id ?? '' })).toMatchObject({
    outcome: 'differs',
  });
});

test('a label for nothing, or for what is not there, is refused', async () => {
  const { owner } = await testShop();
  const make = (aboutId: string | null) =>
    issuePaper(owner, { commandId: newCommandId(), kind: 'lot-label', aboutId, ...about });
  await expect(make(null)).rejects.toThrow('Say which lot the label is for.');
  await expect(make('no-such-lot')).rejects.toMatchObject({ code: 'NOT_FOUND' });
});
