import { expect, test } from 'vitest';
import { doneByLine } from '../../../renderer/screens/orders/history/done-lines.ts';
import type { DoneItem } from '../../../shared/contract/undo.ts';

const item = (commandId: string, historyIds: string[]): DoneItem => ({
  commandId,
  at: '2026-03-02T09:00:00.000Z',
  personName: 'Ida Penn',
  what: 'Order changed',
  effect: 'Puts back what the order said before.',
  canUndo: true,
  why: null,
  undoneAt: null,
  historyIds,
});

test('a command shows beside the last line it wrote on this order, and nowhere else', () => {
  const move = item('move', ['override-1', 'override-2', 'moved']);
  const customer = item('customer', ['here', 'on-another-order']);
  const elsewhere = item('elsewhere', ['far-away']);
  const silent = item('silent', []);
  const lines = ['moved', 'override-2', 'override-1', 'here', 'old'];
  expect([...doneByLine([move, customer, elsewhere, silent], lines)]).toEqual([
    ['moved', move],
    ['here', customer],
  ]);
});
