import type { CoatState } from '../../../core/shop/gates/coat-state.ts';
import type { FinishState } from '../../../core/shop/gates/finish-state.ts';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import type { ConsentKind } from '../../../shared/consents.ts';
import type { EntryItem } from '../../../shared/entries.ts';
import { finalChecks } from '../../../shared/final-checklist.ts';
import type { Gate } from '../../../shared/gates.ts';
import { type Stage, stages } from '../../../shared/stages.ts';

/** The finish room's records answer everything. */
export const finishThere: FinishState = {
  lastGrit: { state: 'ok' },
  system: { state: 'ok' },
  air: { state: 'ok' },
  stringAndFlex: { state: 'ok' },
  wrap: { state: 'ok' },
  coats: ['seal'],
  lastCoatAt: '2026-03-02T09:00:00.000Z',
};

/** A coat from a usable batch, at the right hour, in good air. */
export const coatThere: CoatState = {
  potLife: { state: 'ok' },
  lots: { state: 'ok' },
  window: { state: 'ok' },
  air: { state: 'ok' },
  system: { state: 'ok' },
};

/** A customer's all-round bow with every service, and everything recorded that any gate asks for. */
const allThere: GateFacts = {
  services: [
    'reduce-weight',
    'strip-refinish',
    're-mark',
    'overlay-nock',
    'grip-rest',
    'new-string',
  ],
  route: stages,
  stage: 'finish',
  goingHome: null,
  shopsOwn: false,
  bowIdentified: true,
  checkSubject: {
    construction: 'glass-laminated',
    takeDown: 'bolted three-piece',
    backFacing: 'E-glass',
    bellyFacing: 'E-glass',
    services: ['reduce-weight', 'strip-refinish', 're-mark', 'grip-rest', 'new-string'],
    cameAs: 'whole-bow',
    finished: true,
    bitten: true,
  },
  boxOpened: true,
  conditionRecorded: true,
  belongingsListed: true,
  belongingsBack: true,
  arrivalChecked: true,
  openStops: 0,
  openWatches: 0,
  anyFinding: true,
  stopsPictured: true,
  tagSinceStop: true,
  targetLbf: 45,
  targetDrawIn: 28,
  inscription: '45# @ 28"',
  shipToKnown: true,
  consent: () => 'granted',
  entry: () => ({ outcome: 'ok', recordedAt: '2026-03-02T10:00:00.000Z' }),
  arrivalWeighed: true,
  stationsMeasured: false,
  afterSandingLbf: 45.2,
  afterSandingWeighed: true,
  undershootOffered: true,
  measured: [{ drawIn: 28, forceLbf: 45.2 }],
  markingRoundLbf: 1,
  plan: { state: 'fits' },
  glassCheck: { outcome: 'ok', at: '2026-03-02T10:00:00.000Z' },
  openSurprise: false,
  lastRemovalAt: '2026-03-02T09:00:00.000Z',
  tillerReadAt: '2026-03-02T10:00:00.000Z',
  coated: true,
  lastWorkAt: '2026-03-02T09:00:00.000Z',
  finish: finishThere,
  coat: coatThere,
  openIncidents: 0,
  parcel: { measured: true, assessed: true, refusals: [], tracking: '9400 1' },
  balanceCents: 12_000,
};

const stageOfStep: Partial<Record<Gate, Stage>> = { bite: 'strip-sand' };

/** Everything the gate asks for is there. */
export function openAt(gate: Gate): GateFacts {
  const arrivalOpen = gate !== 'cancelled';
  return { ...allThere, stage: stageOfStep[gate] ?? 'finish', boxOpened: arrivalOpen };
}

/** On its way home unworked, with a stop finding told, pictured and tagged. */
export function openOnTheWayHome(): GateFacts {
  return { ...allThere, goingHome: 'refused', openStops: 1 };
}

export const without =
  (item: EntryItem) =>
  (facts: GateFacts): Partial<GateFacts> => ({
    entry: (asked) => (asked === item ? null : facts.entry(asked)),
  });

const unasked =
  (kind: ConsentKind) =>
  (facts: GateFacts): Partial<GateFacts> => ({
    consent: (asked) => (asked === kind ? 'none' : facts.consent(asked)),
  });

/** One thing a gate asks for: how to take just this away, and who may let it pass. */
export interface GateCase {
  gate: Gate;
  item: string;
  override: 'owner' | 'never';
  goingHome?: true;
  take(facts: GateFacts): Partial<GateFacts>;
}

const set = (change: Partial<GateFacts>) => () => change;

const agreedConsents = (gate: Gate): GateCase[] => [
  { gate, item: 'price-and-scope', override: 'never', take: unasked('price-and-scope') },
  {
    gate,
    item: 'alteration-acknowledgement',
    override: 'never',
    take: unasked('alteration-acknowledgement'),
  },
  {
    gate,
    item: 'expected-weight-loss',
    override: 'never',
    take: (facts) => ({
      services: ['strip-refinish'],
      ...unasked('expected-weight-loss')(facts),
    }),
  },
];

const stop: Omit<GateCase, 'gate'> = {
  item: 'no-stop-finding',
  override: 'never',
  take: set({ openStops: 1 }),
};

const entry = (
  gate: Gate,
  item: EntryItem,
  override: GateCase['override'] = 'owner',
): GateCase => ({ gate, item, override, take: without(item) });

type RecordKey = Exclude<keyof FinishState, 'coats' | 'lastCoatAt'>;

/** Neither a record of the finish room nor an older entry says it. */
const record = (gate: Gate, item: EntryItem, key: RecordKey): GateCase => ({
  gate,
  item,
  override: 'owner',
  take: (facts) => ({
    finish: { ...facts.finish, [key]: { state: 'none' } },
    ...without(item)(facts),
  }),
});

/** Of a coat that is about to be recorded: older entries say nothing of it. */
const ofCoat = (gate: Gate, item: string, key: keyof CoatState): GateCase => ({
  gate,
  item,
  override: 'owner',
  take: (facts) => ({ coat: { ...facts.coat, [key]: { state: 'none' } } }),
});

const coats = (gate: Gate): GateCase[] => [
  { gate, item: 'stage', override: 'never', take: set({ stage: 'cure' }) },
  ofCoat(gate, 'pot-life', 'potLife'),
  ofCoat(gate, 'lots-in-date', 'lots'),
  ofCoat(gate, 'recoat-window', 'window'),
  ofCoat(gate, 'air', 'air'),
  ofCoat(gate, 'finish-system', 'system'),
];

const parcel = { measured: true, assessed: true, refusals: [], tracking: '9400 1' };

/** What each gate needs and who may let it pass, as the shop decided it; common practice of the trade. */
export const gateCases: readonly GateCase[] = [
  {
    gate: 'arrived',
    item: 'bow-identified',
    override: 'owner',
    take: set({ bowIdentified: false }),
  },
  { gate: 'arrived', item: 'box-opened', override: 'owner', take: set({ boxOpened: false }) },
  {
    gate: 'arrived',
    item: 'condition',
    override: 'owner',
    take: set({ conditionRecorded: false }),
  },
  {
    gate: 'arrived',
    item: 'belongings',
    override: 'owner',
    take: set({ belongingsListed: false }),
  },

  {
    gate: 'agreed',
    item: 'arrival-check',
    override: 'owner',
    take: set({ arrivalChecked: false }),
  },
  { gate: 'agreed', ...stop },
  {
    gate: 'agreed',
    item: 'watch-findings',
    override: 'never',
    take: (facts) => ({ openWatches: 1, ...unasked('watch-findings')(facts) }),
  },
  entry('agreed', 'target-feasible'),
  { gate: 'agreed', item: 'target', override: 'owner', take: set({ targetLbf: null }) },
  ...agreedConsents('agreed'),

  {
    gate: 'weight-work',
    item: 'arrival-weighing',
    override: 'never',
    take: set({ arrivalWeighed: false }),
  },
  { gate: 'weight-work', ...stop },
  entry('weight-work', 'stations'),
  {
    gate: 'weight-work',
    item: 'plan-accepted',
    override: 'owner',
    take: (facts) => ({ plan: { state: 'none' }, ...without('plan-accepted')(facts) }),
  },
  entry('weight-work', 'bare-glass'),
  ...agreedConsents('weight-work'),

  { gate: 'bite', item: 'stage', override: 'never', take: set({ stage: 'agreed' }) },
  { gate: 'bite', ...stop },
  {
    gate: 'bite',
    item: 'alteration-acknowledgement',
    override: 'never',
    take: unasked('alteration-acknowledgement'),
  },
  { gate: 'bite', item: 'surprise', override: 'never', take: set({ openSurprise: true }) },
  { gate: 'bite', item: 'glass-check', override: 'never', take: set({ glassCheck: null }) },
  { gate: 'bite', item: 'tiller-read', override: 'owner', take: set({ tillerReadAt: null }) },
  {
    gate: 'bite',
    item: 'above-target',
    override: 'owner',
    take: set({ measured: [{ drawIn: 28, forceLbf: 44.9 }] }),
  },

  ...agreedConsents('strip-sand'),

  {
    gate: 'finish',
    item: 'weighed-after-sanding',
    override: 'owner',
    take: set({ afterSandingWeighed: false, afterSandingLbf: null }),
  },
  {
    gate: 'finish',
    item: 'undershoot-offer',
    override: 'never',
    take: set({ afterSandingLbf: 44, undershootOffered: false }),
  },
  {
    gate: 'finish',
    item: 'undershoot',
    override: 'never',
    take: (facts) => ({ afterSandingLbf: 44, ...unasked('undershoot')(facts) }),
  },
  record('finish', 'last-grit', 'lastGrit'),
  record('finish', 'finish-system', 'system'),
  record('finish', 'air', 'air'),
  ...agreedConsents('finish'),

  { gate: 'lettering', item: 'stage', override: 'never', take: set({ stage: 'cure' }) },
  { gate: 'lettering', item: 'inscription', override: 'never', take: set({ inscription: ' ' }) },
  {
    gate: 'lettering',
    item: 'inscription-weight',
    override: 'never',
    take: set({ inscription: '47# @ 28"' }),
  },
  {
    gate: 'lettering',
    item: 'marking-approval',
    override: 'never',
    take: unasked('marking-approval'),
  },

  ...coats('first-clear'),
  entry('first-clear', 'lettering-applied'),
  entry('first-clear', 'lettering-dry'),
  ...coats('coat'),

  { gate: 'final-check', ...stop },
  record('final-check', 'string-and-flex', 'stringAndFlex'),

  { gate: 'packed', ...stop },
  ...finalChecks.map(
    (check): GateCase => ({
      gate: 'packed',
      item: check.item,
      override: check.safety ? 'never' : 'owner',
      // Each kind of bow has checks of its own: an all-wood sleeve bow has those the other lacks.
      take: (facts) => ({
        ...without(check.item)(facts),
        ...(!check.applies(facts.checkSubject) && {
          checkSubject: {
            ...facts.checkSubject,
            construction: 'all-wood',
            takeDown: 'sleeve',
            backFacing: 'wood',
            bellyFacing: 'wood',
          },
        }),
      }),
    }),
  ),
  { gate: 'packed', item: 'incidents-settled', override: 'owner', take: set({ openIncidents: 1 }) },
  {
    gate: 'packed',
    item: 'belongings-back',
    override: 'owner',
    take: set({ belongingsBack: false }),
  },
  entry('packed', 'paid-or-terms'),
  record('packed', 'safe-to-wrap', 'wrap'),
  { ...entry('packed', 'findings-told'), goingHome: true },
  {
    gate: 'packed',
    item: 'stop-photographs',
    override: 'owner',
    goingHome: true,
    take: set({ stopsPictured: false }),
  },

  { gate: 'shipped', ...stop },
  {
    gate: 'shipped',
    item: 'do-not-draw-tag',
    override: 'never',
    goingHome: true,
    take: set({ tagSinceStop: false }),
  },
  {
    gate: 'shipped',
    item: 'carrier-limits',
    override: 'owner',
    take: set({ parcel: { ...parcel, measured: false } }),
  },
  {
    gate: 'shipped',
    item: 'tracking',
    override: 'owner',
    take: set({ parcel: { ...parcel, tracking: ' ' } }),
  },
  { gate: 'shipped', item: 'address', override: 'owner', take: set({ shipToKnown: false }) },

  { gate: 'collected', ...stop },
  {
    gate: 'collected',
    item: 'do-not-draw-tag',
    override: 'never',
    goingHome: true,
    take: set({ tagSinceStop: false }),
  },
  entry('collected', 'handed-to'),

  { gate: 'cancelled', item: 'bow-here', override: 'never', take: set({ boxOpened: true }) },
];
