import type { Batch, FinishRoom, FinishSystem, RoomBow } from '../../../shared/contract/finish.ts';

/** What the finish room's screens are tested with. All times around noon of one day. */
export const noon = Date.parse('2026-11-25T12:00:00.000Z');
export const at = (minutes: number) => new Date(noon + minutes * 60_000).toISOString();

export function system(change: Partial<FinishSystem> = {}): FinishSystem {
  const { kind = 'two-part' } = change;
  return {
    id: 'hard',
    rowVersion: 1,
    name: 'Hard clear',
    kind,
    sheet: {
      kind: 'aerosol',
      name: 'Hard clear',
      revision: 'C',
      datedOn: '2026-03-01',
      air: { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 70 } },
      coats: { from: 2, to: 4 },
      recoat: [{ fromF: 60, toF: 90, spans: [{ fromH: 4, toH: 24, scuff: false }] }],
      cure: { handle: 12, stringAndFlex: 72, wrap: 96, full: 168 },
      lastGrit: { glass: null, wood: null, overlay: null },
      scuffGrit: null,
      hazards: [],
    },
    resinId: null,
    hardenerId: null,
    thinnerId: null,
    active: true,
    resinName: '',
    hardenerName: '',
    thinnerName: '',
    cautions: [],
    ...change,
  };
}

export function bow(change: Partial<RoomBow> = {}): RoomBow {
  return {
    orderId: 'o1',
    number: '26-0001',
    bowLine: 'longbow 66"',
    customerName: 'Hale',
    stage: 'finish',
    onHold: false,
    finishSystemId: 'hard',
    finishName: 'Hard clear',
    coatsOn: 0,
    coatsFrom: 2,
    coatsTo: 4,
    lastCoatAt: null,
    window: null,
    lastGrits: [],
    cure: [],
    passed: [],
    areaIn2: 180,
    lettered: false,
    ...change,
  };
}

export function window(
  state: NonNullable<RoomBow['window']>['state'],
  change: Partial<NonNullable<RoomBow['window']>> = {},
): NonNullable<RoomBow['window']> {
  return {
    state,
    sentence: `${state} it is.`,
    heldF: 70,
    opensAt: null,
    closesAt: null,
    doubts: [],
    ...change,
  };
}

export function batch(change: Partial<Batch> = {}): Batch {
  return {
    id: 'b1',
    rowVersion: 1,
    name: '261125-1',
    finishSystemId: 'hard',
    systemName: 'Hard clear',
    mixedAt: at(-30),
    mixF: 70,
    resinG: 41.2,
    hardenerG: 10.4,
    thinnerG: null,
    resinMl: 40,
    hardenerMl: 10,
    thinnerMl: 4,
    usableFrom: at(-15),
    usableUntil: at(90),
    discardedAt: null,
    discardedWhy: '',
    note: '',
    personName: 'Ida Penn',
    state: 'usable',
    lots: [],
    cautions: [],
    ...change,
  };
}

export function room(change: Partial<FinishRoom> = {}): FinishRoom {
  return {
    now: at(0),
    systems: [system()],
    batches: [],
    air: null,
    bows: [],
    slots: { used: 2, all: 8 },
    transferPercent: 30,
    clockTrouble: null,
    ...change,
  };
}
