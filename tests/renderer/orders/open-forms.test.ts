import { expect, test } from 'vitest';
import { openingInAddress, placeOf } from '../../../renderer/screens/orders/open-forms.ts';
import { sections } from '../../../shared/gates.ts';

test.each([...sections, 'hold', 'tasks'])('an address may ask for the form of "%s"', (section) => {
  expect(openingInAddress(`?open=${section}`)).toEqual({ section, opens: null });
  expect(openingInAddress(`?open=${section}:glass-check`)).toEqual({
    section,
    opens: 'glass-check',
  });
});

test('an address that names no section opens nothing', () => {
  for (const search of ['', '?open=', '?open=nowhere:x', '?other=bow']) {
    expect(openingInAddress(search)).toBeNull();
  }
});

test('a missing target or address is put right where the job is written', () => {
  expect(placeOf('bow', false)).toBe('bow');
  expect(placeOf('bow', true)).toBe('job');
  expect(placeOf('address', false)).toBe('job');
  expect(placeOf('consents', true)).toBe('consents');
});
