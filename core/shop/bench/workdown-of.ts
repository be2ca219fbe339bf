import type { StringTrack } from '../../../shared/bench.ts';
import type { Limb } from '../../../shared/bows.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import { type BowResponse, withWidths } from '../../limb/index.ts';
import type {
  RemovalCutRow,
  RemovalFaceRow,
  RemovalRow,
  TillerReadingRow,
  WeightPlanRow,
} from '../../storage/tables.ts';
import { inputOf, responseOf } from '../plans/stored.ts';
import type { StoredReading } from '../readings/stored.ts';
import {
  type OpenSurprise,
  openSurpriseIn,
  removalsSince,
  replayWeights,
  type WeightReplay,
  type WeightRows,
} from './weight-replay.ts';

export interface WorkdownRows extends WeightRows {
  cuts: readonly RemovalCutRow[];
  faces: readonly RemovalFaceRow[];
  tillers: readonly TillerReadingRow[];
  /** When the limbs were measured that the plan rests on; null where they were not. */
  measuredAt: string | null;
}

export interface TillerNow {
  /** Upper minus lower string distance at the fades, inches. */
  nowIn: number;
  upperTrack: StringTrack | null;
  lowerTrack: StringTrack | null;
  /** Read after the last removal. */
  isCurrent: boolean;
}

/** A cut far out takes nothing nearer the fade, part of the limb's length. */
export const farOutFromPart = 0.35;

type PerFace = { back: number; belly: number };

/** Where the work on a bow stands, all of it from the rows. */
export interface Workdown {
  plan: WeightPlanRow;
  replay: WeightReplay;
  openSurprise: OpenSurprise | null;
  /** With the widths as they are now. */
  response: BowResponse;
  /** As the plan was made: widths that limits count from. */
  planResponse: BowResponse;
  /** Bites of weight work and light passes; sanding is none. */
  bitesTaken: number;
  /** Full cut taken so far off one side, inches; cuts far out by themselves. */
  narrowedIn: Record<Limb, number>;
  narrowedFarOutIn: Record<Limb, number>;
  /** Off each face so far, thousandths. */
  thinnedThou: Record<Limb, PerFace>;
  /** How often the bow was stripped or sanded since the plan. */
  strips: number;
  /** Narrowed, and its widths not measured again. */
  openRemoval: RemovalRow | null;
  tiller: TillerNow;
  /** Of the whole order, before the plan too. */
  lastRemovalAt: string | null;
}

const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;
const samePlace = (a: number, b: number) => Math.abs(a - b) < 1e-6;

/** Width at a place after a removal, inches: as measured, else as it was meant. */
export function widthAfter(cut: RemovalCutRow, presentIn: number): number {
  const { width_after_in: after, done_left_in: left, done_right_in: right } = cut;
  return after ?? (cut.width_before_in ?? presentIn) - (left ?? 0) - (right ?? 0);
}

/** The place of a response that a stored cut belongs to. */
export const cutAt = (cuts: readonly RemovalCutRow[], limb: Limb, fromFadeIn: number) =>
  cuts.find((cut) => cut.limb === limb && samePlace(cut.from_fade_in, fromFadeIn));

/** Off a place between those of an earlier plan, inches: evenly from one to the next. */
function offBetween(cuts: readonly RemovalCutRow[], limb: Limb, fromFadeIn: number): number {
  const here = cuts
    .filter((cut) => cut.limb === limb)
    .sort((a, b) => a.from_fade_in - b.from_fade_in);
  const next = here.findIndex((cut) => cut.from_fade_in > fromFadeIn);
  const [inner, outer] = [here[next - 1], here[next]];
  if (inner === undefined || outer === undefined) return 0;
  const off = (cut: RemovalCutRow) => (cut.width_before_in ?? 0) - widthAfter(cut, 0);
  const part = (fromFadeIn - inner.from_fade_in) / (outer.from_fade_in - inner.from_fade_in);
  return off(inner) + part * (off(outer) - off(inner));
}

/** Widths at the places of a plan after removals, inches, oldest removal first. */
function presentWidths(
  response: BowResponse,
  removals: readonly RemovalRow[],
  cuts: readonly RemovalCutRow[],
): Record<Limb, number[]> {
  const cutsOf = Map.groupBy(cuts, (cut) => cut.removal_id);
  const widths = (limb: Limb) =>
    response[limb].stations.map(({ fromFadeIn, widthIn }) =>
      removals.reduce((presentIn, { id }) => {
        const here = cutsOf.get(id) ?? [];
        const cut = cutAt(here, limb, fromFadeIn);
        return cut === undefined
          ? presentIn - offBetween(here, limb, fromFadeIn)
          : widthAfter(cut, presentIn);
      }, widthIn),
    );
  return { upper: widths('upper'), lower: widths('lower') };
}

function narrowed(removals: readonly RemovalRow[], cuts: readonly RemovalCutRow[], limb: Limb) {
  const sides = removals.map(({ id }) => {
    const here = cuts.filter((cut) => cut.removal_id === id && cut.limb === limb);
    return Math.max(
      0,
      ...here.map(({ done_left_in, done_right_in }) => (done_left_in ?? 0) + (done_right_in ?? 0)),
    );
  });
  // A tip that tracks gets more off one side, the same in total.
  return sides.reduce((sum, one) => sum + one / 2, 0);
}

/** Nothing off here, or the place lies past the inner part of the limb. */
function isUncutInside(cut: RemovalCutRow, { bow }: PlanInput): boolean {
  const off = (cut.done_left_in ?? 0) + (cut.done_right_in ?? 0);
  return off === 0 || cut.from_fade_in > farOutFromPart * bow[cut.limb].lengthIn;
}

function thinned(removals: readonly RemovalRow[], faces: readonly RemovalFaceRow[], limb: Limb) {
  const ids = new Set(removals.map(({ id }) => id));
  const off = (face: 'back' | 'belly') =>
    faces
      .filter((row) => ids.has(row.removal_id) && row.limb === limb && row.face === face)
      .reduce((sum, row) => sum + (row.measured_thou ?? row.done_thou ?? row.planned_thou), 0);
  return { back: off('back'), belly: off('belly') };
}

interface TillerSeen extends Omit<TillerNow, 'isCurrent'> {
  at: string;
}

/** The newest of what was read by itself and with a weighing; tracks only come with the former. */
function tillerOf(
  plan: WeightPlanRow,
  readings: readonly StoredReading[],
  tillers: readonly TillerReadingRow[],
): TillerSeen {
  const first: TillerSeen = {
    at: plan.accepted_at,
    nowIn: inputOf(plan).wish.tillerIn,
    upperTrack: null,
    lowerTrack: null,
  };
  const read = tillers.filter(alive).map(
    (row): TillerSeen => ({
      at: row.read_at,
      nowIn: row.tiller_in,
      upperTrack: row.upper_track,
      lowerTrack: row.lower_track,
    }),
  );
  const weighed = readings.filter(alive).flatMap(({ tiller_in, weighed_at }): TillerSeen[] => {
    if (tiller_in === null) return [];
    return [{ at: weighed_at, nowIn: tiller_in, upperTrack: null, lowerTrack: null }];
  });
  const all = [first, ...[...read, ...weighed].filter(({ at }) => at > plan.accepted_at)];
  const last = all.toSorted((a, b) => (a.at < b.at ? -1 : 1)).at(-1) ?? first;
  const tracked = all.filter(({ upperTrack }) => upperTrack !== null).at(-1);
  const { upperTrack = null, lowerTrack = null } = tracked ?? {};
  return { ...last, upperTrack, lowerTrack };
}

/** When something was last taken off, whatever the plan; null where nothing was. */
export function lastRemovalOf(removals: readonly RemovalRow[]): string | null {
  const done = removals.filter(alive).flatMap(({ done_at }) => done_at ?? []);
  return done.sort().at(-1) ?? null;
}

/** Where the work stands under a plan that was accepted. Pure. */
export function workdownOf(plan: WeightPlanRow, rows: WorkdownRows): Workdown {
  const replay = replayWeights(plan, rows);
  const { removals } = replay;
  const planResponse = responseOf(plan);
  const sinceMeasured = removalsSince(rows.measuredAt ?? plan.accepted_at, rows.removals);
  const lastRemovalAt = lastRemovalOf(rows.removals);
  const isFarOut = ({ id }: RemovalRow) => {
    const cuts = rows.cuts.filter((cut) => cut.removal_id === id);
    return cuts.length > 0 && cuts.every((cut) => isUncutInside(cut, inputOf(plan)));
  };
  const [farOut, along] = [removals.filter(isFarOut), removals.filter((row) => !isFarOut(row))];
  const { at, ...tiller } = tillerOf(plan, rows.readings, rows.tillers);
  return {
    plan,
    replay,
    openSurprise: openSurpriseIn(replay, rows.surprises),
    planResponse,
    response: withWidths(planResponse, presentWidths(planResponse, sinceMeasured, rows.cuts)),
    bitesTaken: removals.filter(({ method }) => method !== 'strip').length,
    narrowedIn: {
      upper: narrowed(along, rows.cuts, 'upper'),
      lower: narrowed(along, rows.cuts, 'lower'),
    },
    narrowedFarOutIn: {
      upper: narrowed(farOut, rows.cuts, 'upper'),
      lower: narrowed(farOut, rows.cuts, 'lower'),
    },
    thinnedThou: {
      upper: thinned(removals, rows.faces, 'upper'),
      lower: thinned(removals, rows.faces, 'lower'),
    },
    strips: removals.filter(({ method }) => method === 'strip').length,
    openRemoval:
      removals.find(({ method, remeasured_at }) => method === 'narrow' && remeasured_at === null) ??
      null,
    tiller: { ...tiller, isCurrent: lastRemovalAt === null || at > lastRemovalAt },
    lastRemovalAt,
  };
}
