import type { Migration } from './migration.ts';

const policy = `
CREATE TABLE bench_policy (
  id TEXT PRIMARY KEY CHECK (id = 'bench'),
  body_json TEXT NOT NULL CHECK (json_valid(body_json)),
  row_version INTEGER NOT NULL
) STRICT;
`;

const plans = `
CREATE TABLE weight_plan (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT NOT NULL REFERENCES bow (id),
  limb_set_id TEXT REFERENCES limb_set (id),
  version INTEGER NOT NULL,
  method TEXT NOT NULL,
  geometry_id TEXT REFERENCES geometry (id),
  reading_id TEXT REFERENCES reading (id),
  draw_in REAL NOT NULL,
  weight_lbf REAL NOT NULL,
  weight_sd_lbf REAL NOT NULL,
  target_lbf REAL NOT NULL,
  reserve_lbf REAL NOT NULL,
  stop_at_lbf REAL NOT NULL,
  forecast_lbf REAL NOT NULL,
  forecast_low_lbf REAL NOT NULL,
  forecast_high_lbf REAL NOT NULL,
  tiller_target_in REAL NOT NULL,
  sanding TEXT NOT NULL CHECK (sanding IN ('full strip', 'final sanding only')),
  allowance_mean_thou REAL NOT NULL,
  allowance_sd_thou REAL NOT NULL,
  allowance_jobs INTEGER NOT NULL,
  effectiveness_mean REAL NOT NULL,
  effectiveness_sd REAL NOT NULL,
  effectiveness_jobs INTEGER NOT NULL,
  drop_per_thou REAL NOT NULL,
  slope_lbf_per_in REAL NOT NULL,
  brace_lbf_per_in REAL NOT NULL,
  input_json TEXT NOT NULL CHECK (json_valid(input_json)),
  method_json TEXT NOT NULL CHECK (json_valid(method_json)),
  response_json TEXT NOT NULL CHECK (json_valid(response_json)),
  confirmed_because TEXT NOT NULL,
  accepted_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL,
  UNIQUE (order_id, version)
) STRICT;
CREATE INDEX weight_plan_by_bow ON weight_plan (bow_id);
`;

const removals = `
CREATE TABLE removal (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT NOT NULL REFERENCES bow (id),
  limb_set_id TEXT REFERENCES limb_set (id),
  plan_id TEXT REFERENCES weight_plan (id),
  method TEXT NOT NULL CHECK (method IN ('narrow', 'thin', 'scrape', 'strokes', 'strip', 'noted')),
  tool TEXT NOT NULL,
  edge_radius_in REAL,
  modelled_drop REAL,
  drop_sd REAL,
  forecast_lbf REAL,
  forecast_sd_lbf REAL,
  planned_at TEXT NOT NULL,
  done_at TEXT,
  remeasured_at TEXT,
  note TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX removal_by_order ON removal (order_id);
CREATE INDEX removal_by_bow ON removal (bow_id);

CREATE TABLE removal_cut (
  id TEXT PRIMARY KEY,
  removal_id TEXT NOT NULL REFERENCES removal (id),
  limb TEXT NOT NULL CHECK (limb IN ('upper', 'lower')),
  from_fade_in REAL NOT NULL,
  planned_left_in REAL NOT NULL, planned_right_in REAL NOT NULL,
  done_left_in REAL, done_right_in REAL,
  width_before_in REAL,
  width_after_in REAL,
  row_version INTEGER NOT NULL,
  UNIQUE (removal_id, limb, from_fade_in)
) STRICT;

CREATE TABLE removal_face (
  id TEXT PRIMARY KEY,
  removal_id TEXT NOT NULL REFERENCES removal (id),
  limb TEXT NOT NULL CHECK (limb IN ('upper', 'lower')),
  face TEXT NOT NULL CHECK (face IN ('back', 'belly')),
  planned_thou REAL NOT NULL,
  done_thou REAL,
  measured_thou REAL,
  row_version INTEGER NOT NULL,
  UNIQUE (removal_id, limb, face)
) STRICT;

CREATE TABLE glass_check (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT NOT NULL REFERENCES bow (id),
  removal_id TEXT REFERENCES removal (id),
  show_through INTEGER NOT NULL CHECK (show_through IN (0, 1)),
  strands INTEGER NOT NULL CHECK (strands IN (0, 1)),
  run_out INTEGER NOT NULL CHECK (run_out IN (0, 1)),
  exposed_core INTEGER NOT NULL CHECK (exposed_core IN (0, 1)),
  outcome TEXT NOT NULL CHECK (outcome IN ('ok', 'not-ok')),
  note TEXT NOT NULL,
  checked_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX glass_check_by_order ON glass_check (order_id);

CREATE TABLE tiller_reading (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT NOT NULL REFERENCES bow (id),
  removal_id TEXT REFERENCES removal (id),
  tiller_in REAL NOT NULL,
  upper_track TEXT NOT NULL CHECK (upper_track IN ('left', 'centre', 'right')),
  lower_track TEXT NOT NULL CHECK (lower_track IN ('left', 'centre', 'right')),
  brace_in REAL,
  note TEXT NOT NULL,
  read_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX tiller_reading_by_order ON tiller_reading (order_id);

CREATE TABLE surprise (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  reading_id TEXT NOT NULL REFERENCES reading (id),
  innovation_se REAL NOT NULL,
  forecast_lbf REAL NOT NULL,
  forecast_sd_lbf REAL NOT NULL,
  answers_json TEXT NOT NULL CHECK (json_valid(answers_json)),
  note TEXT NOT NULL,
  answered_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX surprise_by_order ON surprise (order_id);
`;

/**
 * Bites and glass checks that version 2 noted in words become records. Ids are made from the
 * entry's own, so that the step gives the same rows wherever it runs.
 */
const carryOver = `
INSERT INTO removal (
  id, order_id, bow_id, limb_set_id, plan_id, method, tool, edge_radius_in, modelled_drop, drop_sd,
  forecast_lbf, forecast_sd_lbf, planned_at, done_at, remeasured_at, note, person_id, struck_reason,
  row_version)
SELECT 'removal-' || e.id, o.id, o.bow_id, o.limb_set_id, NULL, 'noted', '', NULL, NULL, NULL,
  NULL, NULL, e.recorded_at, e.recorded_at, NULL, e.note, e.person_id, e.struck_reason, 1
FROM entry e JOIN shop_order o ON o.id = e.order_id
WHERE e.item = 'removal' AND o.bow_id IS NOT NULL;

INSERT INTO glass_check (
  id, order_id, bow_id, removal_id, show_through, strands, run_out, exposed_core, outcome, note,
  checked_at, person_id, struck_reason, row_version)
SELECT 'glass-check-' || e.id, o.id, o.bow_id, NULL, 0, 0, 0, 0, e.outcome, e.note,
  e.recorded_at, e.person_id, e.struck_reason, 1
FROM entry e JOIN shop_order o ON o.id = e.order_id
WHERE e.item = 'glass-check' AND o.bow_id IS NOT NULL;
`;

/** Records of the weight bench: plans, removals, glass checks, tiller, and readings that surprised. */
export const weightBench: Migration = {
  version: 3,
  name: 'weight bench',
  up(db) {
    db.exec(policy);
    db.exec(plans);
    db.exec(removals);
    db.exec(carryOver);
  },
};
