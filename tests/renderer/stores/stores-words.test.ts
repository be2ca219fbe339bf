import { describe, expect, test } from 'vitest';
import {
  consumableErrors,
  emptyConsumable,
  inCategory,
} from '../../../renderer/screens/stores/consumable-fields.ts';
import { shoppingText } from '../../../renderer/screens/stores/shopping-text.ts';
import { coverageText, summaryLine } from '../../../renderer/screens/stores/stores-words.ts';
import type { ConsumableSummary } from '../../../shared/contract/stores.ts';

const paper: ConsumableSummary = {
  id: 'a',
  rowVersion: 1,
  name: 'Wet sheets',
  category: 'abrasive',
  unit: 'sheet',
  grit: { grit: 400, scale: 'CAMI', micrometres: 23, source: 'a print' },
  barcode: 'S0001',
  shelf: 'Rack 2',
  hazards: [],
  active: true,
  onHand: 12,
  inDate: 12,
  onOrder: 50,
  nextLastDay: null,
  coverageWeeks: 6,
  marks: [],
};

test('a line says grain with its scale, place, how long it lasts and what is coming', () => {
  expect(summaryLine(paper)).toBe('CAMI 400 (23 µm), Rack 2, 6 weeks left, 50 sheets on order');
  const away = { ...paper, grit: null, shelf: '', coverageWeeks: null, onOrder: 0, active: false };
  expect(summaryLine(away)).toBe('put away');
});

test.each([
  [null, ''],
  [0.4, 'under a week left'],
  [1, '1 week left'],
  [2.25, '2.3 weeks left'],
  [40.6, '41 weeks left'],
  [300, 'over two years left'],
])('%s weeks are told as "%s"', (weeks, text) => {
  expect(coverageText(weeks)).toBe(text);
});

test('the shopping list as text has a line each, also where nobody can tell how much', () => {
  const item = {
    consumableId: 'a',
    rowVersion: 1,
    category: 'abrasive' as const,
    inDate: 0,
    onOrder: 0,
  };
  const list = [
    { ...item, name: 'Wet sheets', unit: 'sheet', quantity: 50, why: 'low' },
    { ...item, name: 'Acetone', unit: 'fl oz', quantity: null, why: 'none' },
  ] as const;
  expect(shoppingText(list, '2026-03-02')).toBe(
    'Shopping list, 2026-03-02\n- Wet sheets: 50 sheets\n- Acetone: as much as you see fit',
  );
});

describe('the form of a consumable', () => {
  test('another category takes no grit along and offers its usual unit', () => {
    const sheet = { ...emptyConsumable, grit: { grit: 320, scale: 'P' as const } };
    expect(inCategory(sheet, 'hardener')).toMatchObject({ unit: 'mL', grit: null });
    expect(inCategory(sheet, 'string')).toMatchObject({ unit: 'each', grit: null });
    expect(inCategory(sheet, 'abrasive')).toMatchObject({ unit: 'sheet', grit: sheet.grit });
  });

  test('what is wrong is said by its field, in words', () => {
    const odd = { ...emptyConsumable, weeklyUse: 0, openedDays: 0.5 };
    expect(consumableErrors(odd)).toMatchObject({
      name: 'This may not be empty.',
      weeklyUse: 'The use in a week must be more than 0.',
    });
    expect(consumableErrors(odd).openedDays).toBeDefined();
    expect(consumableErrors({ ...emptyConsumable, name: 'Acetone' })).toEqual({});
  });
});
