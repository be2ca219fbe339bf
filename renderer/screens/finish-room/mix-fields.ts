import type {
  FinishRoom,
  FinishSystem,
  MixWanted,
  RoomBow,
} from '../../../shared/contract/finish.ts';
import { instantFrom } from './when.ts';

/** How the amount is said: from the bows, or straight. */
export const wantedWays = ['bows', 'volume', 'weight'] as const;
export type WantedWay = (typeof wantedWays)[number];
export const wantedWayLabels: Record<WantedWay, string> = {
  bows: 'For these bows',
  volume: 'So many mL',
  weight: 'So many g',
};

/** A mix as the form holds it. */
export interface MixFields {
  systemId: string | null;
  way: WantedWay;
  ml: number | null;
  g: number | null;
  orderIds: readonly string[];
  moreAreaIn2: number | null;
  coats: number | null;
  /** Empty: the middle of the sheet's range. */
  wetMil: number | null;
  leftInGunMl: number | null;
  mixF: number | null;
  name: string;
  note: string;
  at: string;
}

/** Finishes with a pot life: what has none is put on straight from its container. */
export function mixable(systems: readonly FinishSystem[]): FinishSystem[] {
  return systems.filter(({ active, kind }) => active && kind === 'two-part');
}

/** Bows of a finish that still wait for coats. */
export function bowsFor(bows: readonly RoomBow[], systemId: string | null): RoomBow[] {
  return bows.filter(
    ({ finishSystemId, stage }) => finishSystemId === systemId && stage !== 'cure',
  );
}

/** The finish most bows wait for; the first where none waits. */
export function usualSystem(room: Pick<FinishRoom, 'systems' | 'bows'>): string | null {
  const inUse = room.systems.filter(({ active }) => active);
  const waiting = (id: string) => bowsFor(room.bows, id).length;
  return inUse.toSorted((a, b) => waiting(b.id) - waiting(a.id))[0]?.id ?? null;
}

export function newMix(room: FinishRoom, systemId: string | null): MixFields {
  return {
    systemId,
    way: bowsFor(room.bows, systemId).length > 0 ? 'bows' : 'volume',
    ml: null,
    g: null,
    orderIds: [],
    moreAreaIn2: null,
    coats: 1,
    wetMil: null,
    leftInGunMl: null,
    mixF: room.air?.airF ?? null,
    name: '',
    note: '',
    at: '',
  };
}

export function wantedFrom(fields: MixFields): MixWanted {
  switch (fields.way) {
    case 'volume':
      return { by: 'volume', ml: fields.ml ?? Number.NaN };
    case 'weight':
      return { by: 'weight', g: fields.g ?? Number.NaN };
    case 'bows':
      return {
        by: 'bows',
        orderIds: [...fields.orderIds],
        moreAreaIn2: fields.moreAreaIn2 ?? 0,
        coats: fields.coats ?? Number.NaN,
        wetMil: fields.wetMil,
        leftInGunMl: fields.leftInGunMl ?? 0,
      };
  }
}

/** What the plan is asked with; the command takes the rest besides. */
export const planInput = (fields: MixFields) => ({
  finishSystemId: fields.systemId ?? '',
  wanted: wantedFrom(fields),
  mixF: fields.mixF ?? Number.NaN,
});

export const mixInput = (fields: MixFields) => ({
  ...planInput(fields),
  name: fields.name,
  at: instantFrom(fields.at),
  note: fields.note,
});

/** Something is wanted at all: without a bow and an area there is nothing to reckon. */
export const isAmountGiven = ({ way, orderIds, moreAreaIn2 }: MixFields) =>
  way !== 'bows' || orderIds.length > 0 || (moreAreaIn2 ?? 0) > 0;
