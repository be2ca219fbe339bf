import {
  recordRemoval,
  recordWeighing,
  startWorkdown,
  surpriseFromSe,
  type WorkdownState,
  weightSdLbf,
} from '../../limb/index.ts';
import type { RemovalRow, SurpriseRow, WeightPlanRow } from '../../storage/tables.ts';
import { weighingSpreadOf } from '../plans/weighing-spread.ts';
import type { StoredReading } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';

/** What the weight of one job is followed by. Lists in any order; struck-out rows do not count. */
export interface WeightRows {
  /** The plan that stands; without one nothing is expected of a reading. */
  plan: WeightPlanRow | null;
  readings: readonly StoredReading[];
  removals: readonly RemovalRow[];
  surprises: readonly SurpriseRow[];
  /** Smallest step that each scale shows, lbf, by its id. */
  resolutions: ReadonlyMap<string, number>;
}

/** A weighing at the plan's draw, beside what was expected of it. */
export interface FollowedReading {
  id: string;
  rowVersion: number;
  at: string;
  lbf: number;
  /** One standard deviation of the session, the scale's own error left out, lbf. */
  sessionSdLbf: number;
  /** Null where nothing told: the plan's own, or the first after a removal of unknown amount. */
  expectedLbf: number | null;
  /** Spread of the weight expected, the reading's own left out, lbf. */
  expectedSdLbf: number | null;
  /** Reading minus forecast, standard errors; null as `expectedLbf`. */
  innovation: number | null;
}

export interface WeightReplay {
  state: WorkdownState;
  /** False after a removal of unknown amount, until the bow is weighed again. */
  known: boolean;
  /** Oldest first; the plan's own is the first. */
  readings: readonly FollowedReading[];
  /** Removals of this plan that count, oldest first. */
  removals: readonly RemovalRow[];
  weighedSinceRemoval: boolean;
}

export interface OpenSurprise {
  readingId: string;
  rowVersion: number;
  innovationSe: number;
  readLbf: number;
  expectedLbf: number;
  expectedSdLbf: number;
}

type Plan = WeightPlanRow;
const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;

/** Standing removals done since an instant, oldest first. */
export function removalsSince(at: string, removals: readonly RemovalRow[]): RemovalRow[] {
  const since = removals.filter((row) => alive(row) && row.done_at !== null && row.done_at > at);
  return since.sort((a, b) => order(a.done_at ?? '', a.id, b.done_at ?? '', b.id));
}

function order(at: string, id: string, otherAt: string, otherId: string): number {
  if (at !== otherAt) return at < otherAt ? -1 : 1;
  return id < otherId ? -1 : 1;
}

interface Weighing {
  row: StoredReading;
  lbf: number;
  spread: { sessionLbf: number; checkLbf: number };
}

function weighingOf(plan: Plan, row: StoredReading, rows: WeightRows): Weighing | null {
  const lbf = weightAtAmoDraw(row.pulls, row.draw_reference, plan.draw_in);
  if (lbf === null) return null;
  const resolution = rows.resolutions.get(row.scale_id) ?? 0;
  const slopes = { perDrawLbf: plan.slope_lbf_per_in, perBraceLbf: plan.brace_lbf_per_in };
  return { row, lbf, spread: weighingSpreadOf(row, plan.draw_in, resolution, slopes) };
}

const seen = (
  { row, lbf, spread }: Weighing,
  expected: Pick<FollowedReading, 'expectedLbf' | 'expectedSdLbf' | 'innovation'>,
): FollowedReading => ({
  id: row.id,
  rowVersion: row.row_version,
  at: row.weighed_at,
  lbf,
  sessionSdLbf: spread.sessionLbf,
  ...expected,
});

const unexpected = { expectedLbf: null, expectedSdLbf: null, innovation: null };

class Follower {
  readonly #plan: Plan;
  state: WorkdownState;
  known = true;
  weighedSinceRemoval = true;
  readonly readings: FollowedReading[] = [];

  constructor(plan: Plan, own: Weighing | null) {
    this.#plan = plan;
    this.state = startWorkdown({
      weightLbf: plan.weight_lbf,
      weightSdLbf: own?.spread.sessionLbf ?? plan.weight_sd_lbf,
      effectiveness: { mean: plan.effectiveness_mean, sd: plan.effectiveness_sd },
      scaleSdLbf: own?.spread.checkLbf ?? 0,
    });
    if (own !== null) this.readings.push(seen(own, unexpected));
  }

  weigh(weighing: Weighing): void {
    const { lbf, spread } = weighing;
    this.weighedSinceRemoval = true;
    if (!this.known) {
      const { effectiveness, effectivenessVar, scaleSdLbf } = this.state;
      this.state = startWorkdown({
        weightLbf: lbf,
        weightSdLbf: spread.sessionLbf,
        effectiveness: { mean: effectiveness, sd: Math.sqrt(effectivenessVar) },
        scaleSdLbf,
      });
      this.known = true;
      this.readings.push(seen(weighing, unexpected));
      return;
    }
    const before = this.state;
    const weighed = recordWeighing(before, { weightLbf: lbf, sdLbf: spread.sessionLbf });
    this.state = weighed.state;
    const expected = { expectedLbf: before.weightLbf, expectedSdLbf: weightSdLbf(before) };
    this.readings.push(seen(weighing, { ...expected, innovation: weighed.innovation }));
  }

  take({ modelled_drop: drop, drop_sd: dropSd }: RemovalRow): void {
    this.weighedSinceRemoval = false;
    if (drop === null) this.known = false;
    else this.state = recordRemoval(this.state, drop, this.state.weightLbf * (dropSd ?? 0));
  }

  follow(rows: WeightRows): WeightReplay {
    const plan = this.#plan;
    const later = rows.readings.filter((row) => alive(row) && row.weighed_at > plan.accepted_at);
    const weighings = later.flatMap((row) => weighingOf(plan, row, rows) ?? []);
    const removals = removalsSince(plan.accepted_at, rows.removals);
    const events = [
      ...weighings.map((one) => ({
        at: one.row.weighed_at,
        id: one.row.id,
        apply: () => this.weigh(one),
      })),
      ...removals.map((row) => ({
        at: row.done_at ?? '',
        id: row.id,
        apply: () => this.take(row),
      })),
    ].sort((a, b) => order(a.at, a.id, b.at, b.id));
    for (const { apply } of events) apply();
    const { state, known, readings, weighedSinceRemoval } = this;
    return { state, known, readings, removals, weighedSinceRemoval };
  }
}

/**
 * Weight of a bow through its job, lbf: from the weighing its plan rests on, over everything
 * taken off and weighed since the plan was accepted. Pure arithmetic, without the model.
 */
export function replayWeights(plan: Plan, rows: WeightRows): WeightReplay {
  const row = rows.readings.find(({ id }) => id === plan.reading_id);
  const own = row === undefined ? null : weighingOf(plan, row, rows);
  return new Follower(plan, own).follow(rows);
}

/** The first reading since the last removal that does not fit, and that nobody has answered for. */
export function openSurpriseIn(
  { readings, removals }: WeightReplay,
  surprises: readonly SurpriseRow[],
): OpenSurprise | null {
  const answered = new Set(surprises.filter(alive).map((row) => row.reading_id));
  const cutAt = removals.at(-1)?.done_at ?? '';
  for (const { id, rowVersion, at, lbf, innovation, expectedLbf, expectedSdLbf } of readings) {
    if (innovation === null || expectedLbf === null || expectedSdLbf === null) continue;
    if (at <= cutAt || answered.has(id) || Math.abs(innovation) <= surpriseFromSe) continue;
    return {
      readingId: id,
      rowVersion,
      innovationSe: innovation,
      readLbf: lbf,
      expectedLbf,
      expectedSdLbf,
    };
  }
  return null;
}

/** The reading that nothing may be cut on before it is answered for; null where there is none. */
export function openSurpriseOf(rows: WeightRows): OpenSurprise | null {
  if (rows.plan === null) return null;
  return openSurpriseIn(replayWeights(rows.plan, rows), rows.surprises);
}
