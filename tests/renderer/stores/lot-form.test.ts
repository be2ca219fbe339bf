import { expect, test } from 'vitest';
import { lotPath, scannedForm } from '../../../renderer/screens/stores/lot-form.ts';

test.each([
  ['issue', 'issue'],
  ['count', 'count'],
  ['discard', 'discard'],
  ['back', 'back'],
  // Changing a lot by a scan would be chance.
  ['edit', 'issue'],
  ['', 'issue'],
  [null, 'issue'],
] as const)('an address that asks for %j opens the form to %s', (asked, form) => {
  expect(scannedForm(asked)).toBe(form);
});

test('the address of a scanned lot is read back as the form that was open', () => {
  const asked = new URL(lotPath('lot-1', 'count'), 'http://shop').searchParams.get('do');
  expect(scannedForm(asked)).toBe('count');
});
