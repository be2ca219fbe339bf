import { describe, expect, test } from 'vitest';
import { startingProfiles } from '../../core/parcel/index.ts';
import { inputErrors } from '../../renderer/parts/input-schema.ts';
import {
  carrierInput,
  fieldsOfCarrier,
  newCarrier,
  newSurcharge,
} from '../../renderer/screens/settings/carrier-fields.ts';
import {
  isStale,
  limitWords,
  surchargeWords,
  volumeWords,
} from '../../renderer/screens/settings/carrier-words.ts';
import { contract } from '../../shared/contract/index.ts';

const carrierOf = (profile: (typeof startingProfiles)[number]) => ({
  id: 'carrier-1',
  rowVersion: 1,
  name: profile.name,
  asOf: profile.asOf,
  profile,
  claimDays: 60,
  active: true,
});
const errorsOf = (fields: ReturnType<typeof newCarrier>) =>
  inputErrors(contract.carriers.add, carrierInput(fields));

describe('the form of a carrier', () => {
  test.each(startingProfiles)('keeps every figure of $name on the way through it', (profile) => {
    const fields = fieldsOfCarrier(carrierOf(profile));
    expect(carrierInput(fields)).toEqual({ profile, claimDays: 60 });
    expect(errorsOf(fields)).toEqual({});
  });

  test('a limit that is emptied is left out', () => {
    const [postal] = startingProfiles;
    if (postal === undefined) throw new Error('a profile');
    const fields = fieldsOfCarrier(carrierOf(postal));
    const given = carrierInput({ ...fields, accepted: { ...fields.accepted, weightLb: null } });
    expect(given.profile.accepted).toEqual({ lengthPlusGirthIn: 130 });
  });

  test('what is missing or no number is said beside its field', () => {
    const bad = {
      ...newCarrier(),
      divisor: null,
      claimDays: null,
      accepted: { ...newCarrier().accepted, longestIn: Number.NaN },
      surcharges: [newSurcharge([])],
    };
    expect(Object.keys(errorsOf(bad)).toSorted()).toEqual([
      'claimDays',
      'profile.accepted.longestIn',
      'profile.dimensional.divisor',
      'profile.name',
      'profile.surcharges.0.name',
      'profile.surcharges.0.over',
    ]);
  });

  test('surcharges keep apart while they are added', () => {
    const first = newSurcharge([]);
    const second = newSurcharge([first]);
    expect(newSurcharge([second]).key).not.toBe(second.key);
    expect(second.key).not.toBe(first.key);
  });
});

test('limits and volume in words', () => {
  const [postal, privateA] = startingProfiles;
  if (postal === undefined || privateA === undefined) throw new Error('two profiles');
  expect(limitWords(privateA.accepted)).toBe('108 in long, 165 in length plus girth, 150 lb');
  expect(limitWords({})).toBe('');
  expect(volumeWords(postal)).toBe(
    'Volume charged by 166 cubic in a pound where it is over 1728 cubic in.',
  );
  expect(volumeWords(privateA)).toBe('Volume charged by 139 cubic in a pound.');
  expect(surchargeWords({ name: 'Oversized', over: { weightLb: 70 } })).toBe(
    'Oversized: over 70 lb',
  );
  expect(surchargeWords({ name: 'Oversized: over 70 lb', over: { weightLb: 70 } })).toBe(
    'Oversized: over 70 lb',
  );
});

test('figures over a year old are stale', () => {
  const daysAgo = (days: number) =>
    new Date(Date.now() - days * 24 * 60 * 60 * 1000).toISOString().slice(0, 10);
  expect(isStale(daysAgo(360))).toBe(false);
  expect(isStale(daysAgo(370))).toBe(true);
});
