import type { Batch, FinishRoom, FinishSystem, RoomBow } from '../../../shared/contract/finish.ts';
import type { BowSection, CoatPurpose } from '../../../shared/finish.ts';
import { batchState } from './batch-words.ts';
import { gritFrom } from './grit-key.ts';
import { instantFrom } from './when.ts';

/** What is known of one bow in the session besides that it takes part. */
export interface SprayedBow {
  isScuffed: boolean;
  /** Grit it was scuffed with; null where it is not said. */
  scuffGrit: string | null;
  surfaceF: number | null;
}

/** A session as the form holds it. */
export interface SprayFields {
  /** `batch:…` or `system:…`: what is in the gun, on the rag or in the can. */
  source: string | null;
  /** Lot of a can or a bottle; null where it is not said. */
  lotId: string | null;
  /** Used of that lot, in its unit. */
  used: number | null;
  purpose: CoatPurpose;
  /** Empty: the whole bow. */
  sections: readonly BowSection[];
  coats: number | null;
  /** Empty: as last time. */
  wetMil: number | null;
  bows: Readonly<Record<string, SprayedBow>>;
  note: string;
  at: string;
}

export interface Source {
  key: string;
  systemId: string;
  batchId: string | null;
  label: string;
  /** What stands in the way of using it, or how long it may be used. */
  batch: Batch | null;
  system: FinishSystem;
}

type Stock = Pick<FinishRoom, 'systems' | 'batches'>;

/** What can be put on: batches that are not discarded, and finishes without a pot life. */
export function sourcesOf(room: Stock): Source[] {
  const systemOf = new Map(room.systems.map((system) => [system.id, system]));
  const batches = room.batches.flatMap((batch) => {
    const system = systemOf.get(batch.finishSystemId);
    if (system === undefined || batch.discardedAt !== null) return [];
    const label = `${batch.name}, ${batch.systemName}`;
    return [
      { key: `batch:${batch.id}`, systemId: system.id, batchId: batch.id, label, batch, system },
    ];
  });
  const straight = room.systems
    .filter(({ kind, active }) => active && kind !== 'two-part')
    .map((system) => ({
      key: `system:${system.id}`,
      systemId: system.id,
      batchId: null,
      label: system.name,
      batch: null,
      system,
    }));
  return [...batches, ...straight];
}

/** Bows in Finish that wait for this finish. */
export function bowsOf(room: FinishRoom, source: Source | undefined): RoomBow[] {
  if (source === undefined) return [];
  return room.bows.filter(
    ({ finishSystemId, stage }) => finishSystemId === source.systemId && stage === 'finish',
  );
}

/** A session that is written down afterwards may have had a cup that is long past by now. */
export function stockAt(room: FinishRoom, all: readonly Batch[], at: string | null): Stock {
  if (at === null) return room;
  const had = all.filter(({ mixedAt }) => mixedAt <= at && at < lastDayOf(mixedAt));
  return { systems: room.systems, batches: had };
}

const dayMs = 24 * 60 * 60_000;
const lastDayOf = (mixedAt: string) => new Date(Date.parse(mixedAt) + dayMs).toISOString();

/** The one cup that may be used now, where there is just one. */
function onlyUsable(room: FinishRoom, nowMs: number): string | null {
  const usable = sourcesOf(room).filter(
    ({ batch }) => batch === null || batchState(batch, nowMs) === 'usable',
  );
  return usable.length === 1 ? (usable[0]?.key ?? null) : null;
}

export function newSession(room: FinishRoom, batchId: string | null, nowMs: number): SprayFields {
  const source = batchId === null ? onlyUsable(room, nowMs) : `batch:${batchId}`;
  return {
    source,
    lotId: null,
    used: null,
    purpose: usualPurpose(sourcesOf(room).find(({ key }) => key === source)),
    sections: [],
    coats: 1,
    wetMil: null,
    bows: {},
    note: '',
    at: '',
  };
}

export function usualPurpose(source: Source | undefined): CoatPurpose {
  return source?.system.kind === 'hand-rubbed-oil' ? 'oil' : 'clear';
}

export const untouched: SprayedBow = { isScuffed: false, scuffGrit: null, surfaceF: null };

/** What a look at the session is asked with. */
export function sessionInput(fields: SprayFields, source: Source | undefined) {
  return {
    finishSystemId: source?.systemId ?? '',
    batchId: source?.batchId ?? null,
    lotId: source?.batchId === null ? fields.lotId : null,
    airReadingId: null,
    purpose: fields.purpose,
    sections: [...fields.sections],
    coats: fields.coats ?? Number.NaN,
    wetMil: fields.wetMil,
    bows: Object.entries(fields.bows).map(([orderId, { isScuffed, scuffGrit, surfaceF }]) => ({
      orderId,
      scuffed: isScuffed ? { grit: gritFrom(scuffGrit) } : null,
      surfaceF,
      hungSince: null,
    })),
    at: instantFrom(fields.at),
  };
}

export const sprayInput = (fields: SprayFields, source: Source | undefined) => ({
  ...sessionInput(fields, source),
  note: fields.note,
  used: source?.batchId === null ? fields.used : null,
});
