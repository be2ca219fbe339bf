import type { Limb } from '../../../shared/bows.ts';
import { type BowResponse, withWidths } from '../../limb/index.ts';
import type {
  RemovalCutRow,
  RemovalFaceRow,
  RemovalRow,
  TillerReadingRow,
  WeightPlanRow,
} from '../../storage/tables.ts';
import { inputOf, responseOf } from '../plans/stored.ts';
import { isUncutInside, narrowed, type PerFace, presentWidths, thinned } from './taken-so-far.ts';
import { type TillerNow, tillerOf } from './tiller-now.ts';
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
  /** A bite that was not measured again: widths must be, faces may count as they were meant. */
  openRemoval: RemovalRow | null;
  tiller: TillerNow;
  /** Of the whole order, before the plan too. */
  lastRemovalAt: string | null;
}

const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;

/** What a light pass or sanding takes is too little for a loupe. */
const measuredAgain: readonly RemovalRow['method'][] = ['narrow', 'thin', 'scrape'];

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
      removals.find(
        ({ method, remeasured_at }) => measuredAgain.includes(method) && remeasured_at === null,
      ) ?? null,
    tiller: { ...tiller, isCurrent: lastRemovalAt === null || at > lastRemovalAt },
    lastRemovalAt,
  };
}
