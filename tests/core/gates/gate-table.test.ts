import { expect, test } from 'vitest';
import type { GateFacts } from '../../../core/shop/gates/facts.ts';
import { missingAt, passGates } from '../../../core/shop/gates/gates.ts';
import { gateTable } from '../../../core/shop/gates/table.ts';
import type { Gate } from '../../../shared/gates.ts';
import { stages } from '../../../shared/stages.ts';

/** A customer's bow with every service, and nothing recorded yet. */
const nothingYet: GateFacts = {
  services: ['reduce-weight', 'strip-refinish', 're-mark', 'overlay-nock'],
  route: stages,
  shopsOwn: false,
  bowIdentified: false,
  openStops: 1,
  openWatches: 1,
  targetLbf: 45,
  targetDrawIn: 28,
  inscription: '',
  shipToKnown: false,
  consent: () => 'none',
  entry: () => null,
  arrivalWeighed: false,
  afterSandingLbf: null,
  afterSandingWeighed: false,
  measured: [],
  lastRemovalAt: '2026-03-02T09:00:00.000Z',
  tillerReadAt: null,
};

const allThere: GateFacts = {
  ...nothingYet,
  bowIdentified: true,
  openStops: 0,
  inscription: '45# @ 28"',
  measured: [{ drawIn: 28, forceLbf: 45.2 }],
  shipToKnown: true,
  consent: () => 'granted',
  entry: () => ({ outcome: 'ok', recordedAt: '2026-03-02T10:00:00.000Z' }),
  arrivalWeighed: true,
  afterSandingLbf: 45.2,
  afterSandingWeighed: true,
  tillerReadAt: '2026-03-02T10:00:00.000Z',
};

/** Common practice of the trade, as the shop decided it: what each gate needs and who may let it pass. */
const decided: Record<Gate, Record<string, 'owner' | 'never'>> = {
  cancelled: {},
  requested: {},
  'in-mail': {},
  arrived: {
    'bow-identified': 'owner',
    'arrived-on': 'owner',
    condition: 'owner',
    belongings: 'owner',
  },
  agreed: {
    'arrival-check': 'owner',
    'no-stop-finding': 'never',
    'watch-findings': 'never',
    'target-feasible': 'owner',
    'price-and-scope': 'never',
    'alteration-acknowledgement': 'never',
  },
  'weight-work': {
    'arrival-weighing': 'never',
    'no-stop-finding': 'never',
    stations: 'owner',
    'plan-accepted': 'owner',
    'bare-glass': 'owner',
    'price-and-scope': 'never',
    'alteration-acknowledgement': 'never',
  },
  bite: {
    'no-stop-finding': 'never',
    'alteration-acknowledgement': 'never',
    'glass-check': 'never',
    'tiller-read': 'owner',
  },
  'strip-sand': { 'price-and-scope': 'never', 'alteration-acknowledgement': 'never' },
  finish: {
    'weighed-after-sanding': 'owner',
    'last-grit': 'owner',
    'finish-system': 'owner',
    air: 'owner',
    'price-and-scope': 'never',
    'alteration-acknowledgement': 'never',
  },
  lettering: { inscription: 'never', 'marking-approval': 'never' },
  'first-clear': {
    'lettering-applied': 'owner',
    'lettering-dry': 'owner',
    'pot-life': 'owner',
    'lots-in-date': 'owner',
    'recoat-window': 'owner',
  },
  coat: { 'pot-life': 'owner', 'lots-in-date': 'owner', 'recoat-window': 'owner' },
  cure: {},
  'final-check': { 'no-stop-finding': 'never', 'string-and-flex': 'owner' },
  packed: {
    'no-stop-finding': 'never',
    'final-safety': 'never',
    'final-looks': 'owner',
    'belongings-back': 'owner',
    'paid-or-terms': 'owner',
    'safe-to-wrap': 'owner',
  },
  shipped: { 'carrier-limits': 'owner', tracking: 'owner', address: 'owner' },
  collected: { 'handed-to': 'owner' },
};

const gates = Object.keys(decided) as Gate[];

test('every gate of the table is decided', () => {
  expect(Object.keys(gateTable).sort()).toEqual([...gates].sort());
});

test.each(gates)('%s needs what was decided, and the owner may let pass only what may', (gate) => {
  const missing = missingAt(gate, nothingYet);
  expect(Object.fromEntries(missing.map((item) => [item.item, item.override]))).toEqual(
    decided[gate],
  );
  for (const item of missing) expect(item.sentence).toMatch(/^[A-Z].*\.$/);
});

test.each(gates)('%s opens when everything is there', (gate) => {
  expect(missingAt(gate, allThere)).toEqual([]);
});

const reason = { reason: 'decided at the bench' };

test.each(gates.filter((gate) => Object.keys(decided[gate]).length > 0))(
  '%s: an override opens it only where nothing forbids that',
  (gate) => {
    const verdict = passGates([gate], nothingYet, 'owner', reason);
    const forbidden = Object.values(decided[gate]).includes('never');
    expect(verdict.open).toBe(!forbidden);
    expect(() => passGates([gate], nothingYet, 'bench', reason)).toThrow('Only the owner');
    expect(passGates([gate], nothingYet, 'bench', undefined).open).toBe(false);
  },
);

test('an entry recorded as not in order does not open a gate', () => {
  const bad: GateFacts = {
    ...allThere,
    entry: () => ({ outcome: 'not-ok', recordedAt: '2026-03-03T10:00:00.000Z' }),
  };
  expect(missingAt('packed', bad).find((item) => item.item === 'final-safety')?.override).toBe(
    'never',
  );
  expect(missingAt('bite', bad).map((item) => item.item)).toEqual(['glass-check']);
});

test.each([
  [46, []],
  [46.1, ['weighed-after-sanding']],
  [44.5, []],
  [44.4, ['undershoot']],
] as const)('after sanding at %s lb for a target of 45', (afterSandingLbf, items) => {
  const facts: GateFacts = {
    ...allThere,
    afterSandingLbf,
    consent: (kind) => (kind === 'undershoot' ? 'waiting' : 'granted'),
  };
  expect(missingAt('finish', facts).map((item) => item.item)).toEqual(items);
});

test('half a pound under is half a pound under, whatever the binary fractions say', () => {
  // 45.1 - 44.6 is exactly 0.5 on paper and a hair more or less in binary.
  for (let tenths = 300; tenths < 600; tenths += 1) {
    const targetLbf = (tenths + 5) / 10;
    const facts: GateFacts = {
      ...allThere,
      targetLbf,
      afterSandingLbf: tenths / 10,
      consent: (kind) => (kind === 'undershoot' ? 'waiting' : 'granted'),
    };
    expect(missingAt('finish', facts), `${targetLbf}`).toEqual([]);
    const over = { ...facts, targetLbf: tenths / 10, afterSandingLbf: (tenths + 10) / 10 };
    expect(missingAt('finish', over), `${targetLbf}`).toEqual([]);
  }
});

test('consents are not asked of the shop itself', () => {
  const own: GateFacts = { ...nothingYet, shopsOwn: true };
  const items = gates.flatMap((gate) => missingAt(gate, own).map((item) => item.item));
  expect(
    items.filter((item) => /approval|acknowledgement|scope|watch|undershoot/.test(item)),
  ).toEqual([]);
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
    expect(missingAt('lettering', { ...allThere, inscription }).length === 0).toBe(open);
  },
);
