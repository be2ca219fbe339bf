import type { WeightRows } from '../../core/shop/bench/weight-replay.ts';
import type { StoredReading } from '../../core/shop/readings/stored.ts';
import type { RemovalRow, SurpriseRow, WeightPlanRow } from '../../core/storage/tables.ts';

/** An instant of the job, by its minute. */
export const minute = (at: number): string => new Date(Date.UTC(2026, 2, 2, 9, at)).toISOString();

const id = (name: string) => ({ id: name, row_version: 1, struck_reason: null });
const of = { order_id: 'order', bow_id: 'bow', person_id: 'person' };

/** 52 lb at 28 in, weighed in minute 0 and accepted in minute 10. */
export const planRow: WeightPlanRow = {
  ...id('plan'),
  ...of,
  limb_set_id: null,
  version: 1,
  method: 'narrowing',
  geometry_id: 'geometry',
  reading_id: 'arrival',
  draw_in: 28,
  weight_lbf: 52,
  weight_sd_lbf: 0.3,
  target_lbf: 45,
  reserve_lbf: 0.5,
  stop_at_lbf: 47,
  forecast_lbf: 45.5,
  forecast_low_lbf: 45,
  forecast_high_lbf: 46,
  tiller_target_in: 0.0625,
  sanding: 'full strip',
  allowance_mean_thou: 1.4,
  allowance_sd_thou: 0.6,
  allowance_jobs: 0,
  effectiveness_mean: 1,
  effectiveness_sd: 0.12,
  effectiveness_jobs: 0,
  drop_per_thou: 0.022,
  slope_lbf_per_in: 2.6,
  brace_lbf_per_in: 0.8,
  input_json: '',
  method_json: '',
  response_json: '',
  confirmed_because: '',
  accepted_at: minute(10),
};

export function readingRow(
  name: string,
  at: number,
  lbf: number,
  change: Partial<StoredReading> = {},
): StoredReading {
  return {
    ...id(name),
    ...of,
    phase: 'work',
    draw_reference: 'amo',
    limb_set_id: null,
    riser_note: '',
    scale_id: 'scale',
    scale_error_lbf: 0.2,
    rig_zero_lbf: 0,
    brace_in: 7.25,
    string_note: 'shop string',
    string_track: '',
    support_point: '',
    pull_point: '',
    tiller_in: null,
    temperature_f: null,
    moisture_pct: null,
    strung_minutes: null,
    flexed_first: 1,
    note: '',
    weighed_at: minute(at),
    pulls: [lbf + 1, lbf, lbf, lbf].map((forceLbf) => ({ drawIn: 28, forceLbf })),
    ...change,
  };
}

export function removalRow(
  name: string,
  at: number,
  drop: number | null,
  change: Partial<RemovalRow> = {},
): RemovalRow {
  return {
    ...id(name),
    ...of,
    limb_set_id: null,
    plan_id: 'plan',
    method: drop === null ? 'noted' : 'narrow',
    tool: '',
    edge_radius_in: null,
    modelled_drop: drop,
    drop_sd: drop === null ? null : 0.003,
    forecast_lbf: null,
    forecast_sd_lbf: null,
    planned_at: minute(at),
    done_at: minute(at),
    remeasured_at: null,
    note: '',
    ...change,
  };
}

export function surpriseRow(readingId: string, change: Partial<SurpriseRow> = {}): SurpriseRow {
  return {
    ...id(`about ${readingId}`),
    order_id: 'order',
    person_id: 'person',
    reading_id: readingId,
    innovation_se: 4,
    forecast_lbf: 50,
    forecast_sd_lbf: 0.4,
    answers_json: '[]',
    note: '',
    answered_at: minute(60),
    ...change,
  };
}

/** Weighed on arrival, planned; a bite of 4 % in minute 20, weighed as expected in minute 30. */
export const oneBite: WeightRows = {
  plan: planRow,
  readings: [readingRow('arrival', 0, 52), readingRow('first', 30, 49.9)],
  removals: [removalRow('bite', 20, 0.04)],
  surprises: [],
  resolutions: new Map([['scale', 0.1]]),
};
