import { expect, test } from 'vitest';
import { errorText } from '../../renderer/screens/settings/scale-words.ts';

test('the error at a load is said with its side', () => {
  expect(errorText(20, 0.1)).toBe('20 lb: 0.1 lb over');
  expect(errorText(60.25, -0.25)).toBe('60.25 lb: 0.25 lb under');
  expect(errorText(60, 0.004)).toBe('60 lb: right');
});
