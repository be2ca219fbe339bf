import { expect, test } from 'vitest';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import { missingAt } from '../../../core/shop/gates/gates.ts';
import { gate as gateSchema } from '../../../shared/gates.ts';
import { openAt } from './gate-cases.ts';

const items = (gate: Parameters<typeof missingAt>[0], facts: GateFacts) =>
  missingAt(gate, facts).map((item) => item.item);

test('an entry recorded as not in order does not open a gate', () => {
  const notOk = { outcome: 'not-ok', recordedAt: '2026-03-03T10:00:00.000Z' } as const;
  expect(items('packed', { ...openAt('packed'), entry: () => notOk })).toContain('check-flexed');
  const failed = { outcome: 'not-ok', at: '2026-03-03T10:00:00.000Z' } as const;
  expect(items('bite', { ...openAt('bite'), glassCheck: failed })).toEqual(['glass-check']);
});

test('what was looked over before the last bite or coat does not count after it', () => {
  const facts = { ...openAt('packed'), lastWorkAt: '2026-03-02T11:00:00.000Z' };
  expect(items('packed', facts)).toContain('check-flexed');
  expect(items('bite', { ...openAt('bite'), lastRemovalAt: '2026-03-02T11:00:00.000Z' })).toEqual([
    'glass-check',
    'tiller-read',
  ]);
});

test('measured limbs stand for the entry about stations', () => {
  const facts = { ...openAt('weight-work'), entry: () => null, stationsMeasured: true };
  expect(items('weight-work', facts)).not.toContain('stations');
});

test.each([
  [46, []],
  [46.1, ['weighed-after-sanding']],
  [44.5, []],
  [44.4, ['undershoot']],
] as const)('after sanding at %s lb for a target of 45', (afterSandingLbf, expected) => {
  const facts: GateFacts = {
    ...openAt('finish'),
    afterSandingLbf,
    consent: (kind) => (kind === 'undershoot' ? 'waiting' : 'granted'),
  };
  expect(items('finish', facts)).toEqual(expected);
});

test('half a pound under is half a pound under, whatever the binary fractions say', () => {
  // 45.1 - 44.6 is exactly 0.5 on paper and a hair more or less in binary.
  for (let tenths = 300; tenths < 600; tenths += 1) {
    const targetLbf = (tenths + 5) / 10;
    const facts: GateFacts = {
      ...openAt('finish'),
      targetLbf,
      afterSandingLbf: tenths / 10,
      consent: (kind) => (kind === 'undershoot' ? 'waiting' : 'granted'),
    };
    expect(items('finish', facts), `${targetLbf}`).toEqual([]);
    const over = { ...facts, targetLbf: tenths / 10, afterSandingLbf: (tenths + 10) / 10 };
    expect(items('finish', over), `${targetLbf}`).toEqual([]);
  }
});

test('consents are not asked of the shop itself, but an undershoot is still decided', () => {
  const asked = gateSchema.options.flatMap((gate) =>
    items(gate, {
      ...openAt(gate),
      shopsOwn: true,
      openWatches: 1,
      afterSandingLbf: 44,
      undershootOffered: false,
      consent: () => 'none',
    }),
  );
  expect(asked).toEqual(['undershoot-offer']);
});

test.each([
  ['45# @ 28"', true],
  ['AMO 66"', true],
  ['46# @ 28"', false],
  ['45# @ 27"', false],
  ['44.8 lb @ 28 in', true],
] as const)(
  'the lines %s may be lettered after a weighing of 45.2 lb at 28 in: %s',
  (inscription, open) => {
    expect(items('lettering', { ...openAt('lettering'), inscription }).length === 0).toBe(open);
  },
);

test('a box the carrier does not take is refused with the broken limit', () => {
  const parcel = {
    measured: true,
    assessed: true,
    refusals: ['The weight is 71 lb, over 70 lb.'],
    tracking: 'x',
  };
  expect(missingAt('shipped', { ...openAt('shipped'), parcel })[0]?.sentence).toBe(
    'The carrier does not take this box. The weight is 71 lb, over 70 lb.',
  );
});

test('a box nobody held against a carrier is asked for', () => {
  const parcel = { measured: true, assessed: false, refusals: [], tracking: 'x' };
  expect(items('shipped', { ...openAt('shipped'), parcel })).toEqual(['carrier-limits']);
});

test('nothing is cut from a bow that is going home', () => {
  expect(items('bite', { ...openAt('bite'), goingHome: 'declined' })).toContain('stage');
});

test.each([
  [45.1, 28, []],
  [45, 28, ['above-target']],
  [43.9, 28, ['above-target']],
  // A weight at another draw says nothing about the target's.
  [43.9, 27, []],
] as const)(
  'a bite from a bow weighed %s lb at %s in, its target 45 at 28',
  (lbf, drawIn, expected) => {
    const facts = { ...openAt('bite'), measured: [{ drawIn, forceLbf: lbf }] };
    expect(items('bite', facts)).toEqual(expected);
  },
);
