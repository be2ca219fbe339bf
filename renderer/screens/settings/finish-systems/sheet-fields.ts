import type { FinishKind, MixPart, Substrate } from '../../../../shared/finish.ts';
import type { FinishSheetFields as FinishSheet } from '../../../../shared/finish-sheet.ts';
import type { Hazard } from '../../../../shared/hazards.ts';
import { gritFrom, gritKey } from '../../finish-room/grit-key.ts';

/** As it is typed: null where nothing is, NaN while the text is no number. */
export type Typed = number | null;

export interface SpanFields {
  /** Tells the rows of the form apart while they are added and taken out. */
  key: number;
  fromH: Typed;
  /** Empty where the sheet sets no end. */
  toH: Typed;
  scuff: boolean;
}

export interface BandFields {
  key: number;
  fromF: Typed;
  toF: Typed;
  spans: readonly SpanFields[];
}

export interface MixFields {
  by: 'volume' | 'weight';
  resinParts: Typed;
  hardenerParts: Typed;
  thinnerPercent: Typed;
  density: Record<MixPart, Typed>;
}

/** A finish's data sheet as the form holds it, the fields of every kind side by side. */
export interface SheetFields {
  kind: FinishKind;
  name: string;
  revision: string;
  datedOn: string;
  airF: { from: Typed; to: Typed };
  humidityPercent: { from: Typed; to: Typed };
  coats: { from: Typed; to: Typed };
  recoat: readonly BandFields[];
  cure: Record<keyof FinishSheet['cure'], Typed>;
  /** `P-320`; null where the sheet names none. */
  lastGrit: Record<Substrate, string | null>;
  scuffGrit: string | null;
  hazards: readonly Hazard[];
  mix: MixFields;
  film: { solidsPercent: Typed; wetMil: { from: Typed; to: Typed } };
  potLife: { minutes: Typed; referenceF: Typed; inductionMin: Typed };
}

const nextKey = (rows: readonly { key: number }[]) =>
  Math.max(0, ...rows.map(({ key }) => key)) + 1;

export function newSpan(rows: readonly SpanFields[]): SpanFields {
  return { key: nextKey(rows), fromH: rows.at(-1)?.toH ?? null, toH: null, scuff: rows.length > 0 };
}

export function newBand(rows: readonly BandFields[]): BandFields {
  return { key: nextKey(rows), fromF: rows.at(-1)?.toF ?? null, toF: null, spans: [newSpan([])] };
}

const nothingBetween = { from: null, to: null };

/** Nothing but what follows from the kind: every figure is copied from the sheet. */
export function newSheet(kind: FinishKind): SheetFields {
  return {
    kind,
    name: '',
    revision: '',
    datedOn: '',
    airF: nothingBetween,
    humidityPercent: nothingBetween,
    coats: nothingBetween,
    recoat: [newBand([])],
    cure: { handle: null, stringAndFlex: null, wrap: null, full: null },
    lastGrit: { glass: null, wood: null, overlay: null },
    scuffGrit: null,
    hazards: [],
    mix: {
      by: 'volume',
      resinParts: kind === 'one-part' ? 1 : null,
      hardenerParts: kind === 'two-part' ? null : 0,
      thinnerPercent: 0,
      density: { resin: null, hardener: null, thinner: null },
    },
    film: { solidsPercent: null, wetMil: nothingBetween },
    potLife: { minutes: null, referenceF: null, inductionMin: 0 },
  };
}

type RecoatBand = FinishSheet['recoat'][number];

function fieldsOfBand(band: RecoatBand, key: number): BandFields {
  return {
    key,
    fromF: band.fromF,
    toF: band.toF,
    spans: band.spans.map((span, at) => ({ key: at, ...span })),
  };
}

export function fieldsOfSheet(sheet: FinishSheet): SheetFields {
  const blank = newSheet(sheet.kind);
  const hasFilm = sheet.kind === 'two-part' || sheet.kind === 'one-part';
  const keyOf = (grit: FinishSheet['scuffGrit']) => (grit === null ? null : gritKey(grit));
  return {
    kind: sheet.kind,
    name: sheet.name,
    revision: sheet.revision,
    datedOn: sheet.datedOn,
    airF: { ...sheet.air.airF },
    humidityPercent: { ...sheet.air.humidityPercent },
    coats: { ...sheet.coats },
    recoat: sheet.recoat.map(fieldsOfBand),
    cure: { ...sheet.cure },
    lastGrit: {
      glass: keyOf(sheet.lastGrit.glass),
      wood: keyOf(sheet.lastGrit.wood),
      overlay: keyOf(sheet.lastGrit.overlay),
    },
    scuffGrit: keyOf(sheet.scuffGrit),
    hazards: [...sheet.hazards],
    mix: hasFilm ? { ...sheet.mix, density: { ...sheet.mix.density } } : blank.mix,
    film: hasFilm ? sheet.film : blank.film,
    potLife: sheet.kind === 'two-part' ? { ...sheet.potLife } : blank.potLife,
  };
}

/** An empty number that is needed becomes NaN, which the contract refuses by name. */
const needed = (typed: Typed) => typed ?? Number.NaN;

const range = ({ from, to }: { from: Typed; to: Typed }) => ({
  from: needed(from),
  to: needed(to),
});

function bandFrom({ fromF, toF, spans }: BandFields): RecoatBand {
  return {
    fromF: needed(fromF),
    toF: needed(toF),
    spans: spans.map((span) => ({ fromH: needed(span.fromH), toH: span.toH, scuff: span.scuff })),
  };
}

/** The sheet as the contract takes it; what belongs to another kind is left out. */
export function sheetFrom(fields: SheetFields): FinishSheet {
  const { kind, mix, film, potLife, cure, lastGrit } = fields;
  const ofAnyKind = {
    name: fields.name,
    revision: fields.revision,
    datedOn: fields.datedOn,
    air: { airF: range(fields.airF), humidityPercent: range(fields.humidityPercent) },
    coats: range(fields.coats),
    recoat: fields.recoat.map(bandFrom),
    cure: {
      handle: needed(cure.handle),
      stringAndFlex: needed(cure.stringAndFlex),
      wrap: needed(cure.wrap),
      full: needed(cure.full),
    },
    lastGrit: {
      glass: gritFrom(lastGrit.glass),
      wood: gritFrom(lastGrit.wood),
      overlay: gritFrom(lastGrit.overlay),
    },
    scuffGrit: gritFrom(fields.scuffGrit),
    hazards: [...fields.hazards],
  };
  if (kind === 'aerosol' || kind === 'hand-rubbed-oil') return { kind, ...ofAnyKind };
  const mixed = {
    mix: {
      by: mix.by,
      resinParts: needed(mix.resinParts),
      hardenerParts: kind === 'one-part' ? 0 : needed(mix.hardenerParts),
      thinnerPercent: mix.thinnerPercent ?? 0,
      density: {
        resin: mix.density.resin,
        hardener: kind === 'one-part' ? null : mix.density.hardener,
        thinner: mix.density.thinner,
      },
    },
    film: { solidsPercent: needed(film.solidsPercent), wetMil: range(film.wetMil) },
  };
  if (kind === 'one-part') return { kind, ...ofAnyKind, ...mixed };
  const { minutes, referenceF, inductionMin } = potLife;
  return {
    kind,
    ...ofAnyKind,
    ...mixed,
    potLife: {
      minutes: needed(minutes),
      referenceF: needed(referenceF),
      inductionMin: inductionMin ?? 0,
    },
  };
}
