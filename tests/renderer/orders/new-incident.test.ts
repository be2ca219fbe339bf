import { expect, test } from 'vitest';
import {
  newIncident,
  newIncidentErrors,
  newIncidentRequest,
} from '../../../renderer/screens/orders/incidents/new-incident.ts';

const fresh = newIncident('2026-03-02');
const told = { ...fresh, what: 'fell from the rack' };
const tip = { ...fresh.place, part: 'upper limb' as const, more: 'at the tip' };

test('an empty form says what it lacks', () => {
  expect(newIncidentErrors({ ...fresh, happenedOn: '' })).toEqual({
    kind: 'Choose one.',
    happenedOn: 'Give the day.',
    what: 'Say what happened.',
  });
});

test('damage needs its place on the bow, a lost bow has none', () => {
  expect(newIncidentErrors({ ...told, kind: 'damaged-here' }).place).toBeDefined();
  expect(newIncidentErrors({ ...told, kind: 'damaged-here', place: tip })).toEqual({});
  expect(newIncidentErrors({ ...told, kind: 'lost-in-transit' })).toEqual({});
});

test('what was typed for another kind is not sent', () => {
  const fields = { ...told, place: tip, claimWith: 'our insurer', claimUntil: '2026-04-01' };
  expect(newIncidentRequest('order-1', 'damaged-here', fields)).toMatchObject({
    place: 'upper limb, at the tip',
    claimWith: '',
    claimUntil: null,
  });
  expect(newIncidentRequest('order-1', 'lost-in-transit', fields)).toMatchObject({
    place: '',
    claimWith: 'our insurer',
    claimUntil: '2026-04-01',
  });
  expect(
    newIncidentRequest('order-1', 'damaged-in-transit', { ...fields, claimUntil: '' }).claimUntil,
  ).toBeNull();
});
