import { expect, test } from 'vitest';
import { countryCode, isSameCountry } from '../../shared/countries.ts';

test.each([
  ['USA', 'US'],
  ['U.S.A.', 'US'],
  ['the United  States', 'US'],
  ['us', 'US'],
  ['UK', 'GB'],
  ['Scotland', 'GB'],
  ['canada ', 'CA'],
  ['Turkey', 'TR'],
  ['Türkiye', 'TR'],
  ['Côte d’Ivoire', 'CI'],
  ['Atlantis', null],
  ['', null],
])('%s is %s', (written, code) => {
  expect(countryCode(written)).toBe(code);
});

test('one country under two names is the same; unknown words are compared as they stand', () => {
  expect(isSameCountry('USA', 'United States of America')).toBe(true);
  expect(isSameCountry('USA', 'Canada')).toBe(false);
  expect(isSameCountry('Atlantis', ' atlantis')).toBe(true);
  expect(isSameCountry('Atlantis', 'USA')).toBe(false);
});
