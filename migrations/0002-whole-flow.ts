import type { Migration } from './migration.ts';

const shop = `
ALTER TABLE shop ADD COLUMN is_demo INTEGER NOT NULL DEFAULT 0 CHECK (is_demo IN (0, 1));
ALTER TABLE shop ADD COLUMN reminder_days_json TEXT NOT NULL DEFAULT '[3,10,21]'
  CHECK (json_valid(reminder_days_json));
ALTER TABLE shop ADD COLUMN storage_fee_days INTEGER NOT NULL DEFAULT 30;
ALTER TABLE shop ADD COLUMN abandoned_days INTEGER NOT NULL DEFAULT 90;
`;

const bows = `
ALTER TABLE bow RENAME COLUMN facing TO back_facing;
ALTER TABLE bow ADD COLUMN belly_facing TEXT NOT NULL DEFAULT 'unknown';
ALTER TABLE bow ADD COLUMN back_glass_made_in REAL;
ALTER TABLE bow ADD COLUMN back_glass_now_in REAL;
ALTER TABLE bow ADD COLUMN back_glass_how TEXT NOT NULL DEFAULT 'not-measured';
ALTER TABLE bow ADD COLUMN belly_glass_made_in REAL;
ALTER TABLE bow ADD COLUMN belly_glass_now_in REAL;
ALTER TABLE bow ADD COLUMN belly_glass_how TEXT NOT NULL DEFAULT 'not-measured';
ALTER TABLE bow ADD COLUMN core_wood TEXT NOT NULL DEFAULT '';
ALTER TABLE bow ADD COLUMN moisture_pct REAL;
ALTER TABLE bow ADD COLUMN edge_radius_in REAL;
ALTER TABLE bow ADD COLUMN low_stretch_tips TEXT NOT NULL DEFAULT 'unknown';
ALTER TABLE bow ADD COLUMN tip_to_tip_in REAL;
ALTER TABLE bow ADD COLUMN profile TEXT NOT NULL DEFAULT 'unknown';
ALTER TABLE bow ADD COLUMN recurve_depth_in REAL;
ALTER TABLE bow ADD COLUMN throat_to_fade_in REAL;
ALTER TABLE bow ADD COLUMN limb_pad_deg REAL;
ALTER TABLE bow ADD COLUMN upper_fade_in REAL;
ALTER TABLE bow ADD COLUMN upper_limb_in REAL;
ALTER TABLE bow ADD COLUMN lower_fade_in REAL;
ALTER TABLE bow ADD COLUMN lower_limb_in REAL;
UPDATE bow SET belly_facing = back_facing;

CREATE TABLE limb_set (
  id TEXT PRIMARY KEY,
  bow_id TEXT NOT NULL REFERENCES bow (id),
  name TEXT NOT NULL,
  upper_serial TEXT NOT NULL, lower_serial TEXT NOT NULL,
  amo_length_in REAL,
  marked_weight_lbf REAL, marked_draw_in REAL, marked_draw_reference TEXT NOT NULL,
  riser_name TEXT NOT NULL, riser_length_in REAL, riser_pad_deg REAL,
  notes TEXT NOT NULL,
  created_at TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX limb_set_by_bow ON limb_set (bow_id);

CREATE TABLE geometry (
  id TEXT PRIMARY KEY,
  bow_id TEXT NOT NULL REFERENCES bow (id),
  limb_set_id TEXT REFERENCES limb_set (id),
  order_id TEXT REFERENCES shop_order (id),
  version INTEGER NOT NULL,
  measured_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  note TEXT NOT NULL,
  struck_reason TEXT,
  row_version INTEGER NOT NULL,
  UNIQUE (bow_id, version)
) STRICT;

CREATE TABLE geometry_station (
  id TEXT PRIMARY KEY,
  geometry_id TEXT NOT NULL REFERENCES geometry (id),
  limb TEXT NOT NULL CHECK (limb IN ('upper', 'lower')),
  from_fade_in REAL NOT NULL,
  width_in REAL NOT NULL,
  thickness_in REAL,
  surface TEXT NOT NULL CHECK (surface IN ('bare', 'over-finish')),
  row_version INTEGER NOT NULL,
  UNIQUE (geometry_id, limb, from_fade_in)
) STRICT;
`;

const orders = `
ALTER TABLE shop_order ADD COLUMN limb_set_id TEXT REFERENCES limb_set (id);
ALTER TABLE shop_order ADD COLUMN came_as TEXT NOT NULL DEFAULT 'whole-bow'
  CHECK (came_as IN ('whole-bow', 'limbs-only'));
ALTER TABLE shop_order ADD COLUMN going_home TEXT
  CHECK (going_home IN ('declined', 'refused', 'withdrawn', 'broken'));
ALTER TABLE shop_order ADD COLUMN going_home_reason TEXT NOT NULL DEFAULT '';

ALTER TABLE hold ADD COLUMN storage_fee_on TEXT;
ALTER TABLE hold ADD COLUMN abandoned_on TEXT;

CREATE TABLE reminder (
  id TEXT PRIMARY KEY,
  hold_id TEXT NOT NULL REFERENCES hold (id),
  sent_at TEXT NOT NULL,
  how TEXT NOT NULL,
  note TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX reminder_by_hold ON reminder (hold_id);

ALTER TABLE reading ADD COLUMN limb_set_id TEXT REFERENCES limb_set (id);
ALTER TABLE reading ADD COLUMN riser_note TEXT NOT NULL DEFAULT '';
ALTER TABLE reading ADD COLUMN string_track TEXT NOT NULL DEFAULT '';
ALTER TABLE reading ADD COLUMN moisture_pct REAL;
ALTER TABLE reading ADD COLUMN strung_minutes REAL;

CREATE TABLE arrival (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL UNIQUE REFERENCES shop_order (id),
  opened_on TEXT NOT NULL,
  came_by TEXT NOT NULL,
  packaging TEXT NOT NULL,
  packaging_kept INTEGER NOT NULL CHECK (packaging_kept IN (0, 1)),
  packaging_damaged INTEGER NOT NULL CHECK (packaging_damaged IN (0, 1)),
  condition TEXT NOT NULL,
  nothing_came_along INTEGER NOT NULL CHECK (nothing_came_along IN (0, 1)),
  resting_since TEXT,
  looked_over INTEGER NOT NULL CHECK (looked_over IN (0, 1)),
  strung TEXT NOT NULL CHECK (strung IN ('not-yet', 'strung', 'not-strung')),
  not_strung_because TEXT NOT NULL,
  alignment TEXT NOT NULL,
  brace_in REAL,
  tiller_in REAL,
  string_track TEXT NOT NULL,
  note TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  completed_at TEXT,
  completed_by TEXT REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE belonging (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  what TEXT NOT NULL,
  back_at TEXT,
  back_by TEXT REFERENCES person (id),
  back_note TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX belonging_by_order ON belonging (order_id);

CREATE TABLE undershoot (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  measured_lbf REAL NOT NULL,
  target_lbf REAL NOT NULL,
  draw_in REAL NOT NULL,
  offer TEXT NOT NULL CHECK (offer IN ('accept', 'price', 'remedy')),
  price_change_cents INTEGER NOT NULL,
  words TEXT NOT NULL,
  proposed_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX undershoot_by_order ON undershoot (order_id);

CREATE TABLE incident (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT REFERENCES bow (id),
  kind TEXT NOT NULL CHECK (kind IN ('damaged-here', 'damaged-in-transit', 'lost-in-transit')),
  happened_on TEXT NOT NULL,
  what TEXT NOT NULL,
  finding_id TEXT REFERENCES finding (id),
  found_at TEXT NOT NULL,
  found_by TEXT NOT NULL REFERENCES person (id),
  claim_with TEXT NOT NULL,
  claim_until TEXT,
  claim_filed_on TEXT,
  claim_number TEXT NOT NULL,
  owner_told_on TEXT,
  owner_told_how TEXT NOT NULL,
  remedy TEXT NOT NULL,
  settled_at TEXT,
  settled_how TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX incident_by_order ON incident (order_id);
`;

const shipping = `
CREATE TABLE carrier (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  as_of TEXT NOT NULL,
  profile_json TEXT NOT NULL CHECK (json_valid(profile_json)),
  claim_days INTEGER NOT NULL,
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE shipment (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  direction TEXT NOT NULL CHECK (direction IN ('in', 'out')),
  carrier_id TEXT REFERENCES carrier (id),
  carrier_name TEXT NOT NULL,
  shape TEXT NOT NULL CHECK (shape IN ('box', 'round-tube', 'three-sided-tube')),
  length_in REAL, width_in REAL, height_in REAL,
  weight_lb REAL,
  declared_cents INTEGER,
  value_evidence TEXT NOT NULL,
  insured INTEGER NOT NULL CHECK (insured IN (0, 1)),
  tracking TEXT NOT NULL,
  shipped_on TEXT,
  delivered_on TEXT,
  assessment_json TEXT CHECK (assessment_json IS NULL OR json_valid(assessment_json)),
  note TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX shipment_by_order ON shipment (order_id);
`;

const attachments = `
CREATE TABLE attachment (
  id TEXT PRIMARY KEY,
  order_id TEXT REFERENCES shop_order (id),
  bow_id TEXT REFERENCES bow (id),
  finding_id TEXT REFERENCES finding (id),
  incident_id TEXT REFERENCES incident (id),
  shipment_id TEXT REFERENCES shipment (id),
  about TEXT NOT NULL CHECK (about IN ('bow', 'packaging', 'finding', 'incident', 'value', 'message', 'other')),
  file_name TEXT NOT NULL,
  media_type TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  width_px INTEGER, height_px INTEGER,
  taken_at TEXT,
  has_location INTEGER NOT NULL CHECK (has_location IN (0, 1)),
  caption TEXT NOT NULL,
  added_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX attachment_by_order ON attachment (order_id);
CREATE INDEX attachment_by_bow ON attachment (bow_id);
CREATE INDEX attachment_by_sha ON attachment (sha256);
`;

const tasks = `
CREATE TABLE task (
  id TEXT PRIMARY KEY,
  order_id TEXT REFERENCES shop_order (id),
  what TEXT NOT NULL,
  due_on TEXT NOT NULL,
  for_person_id TEXT REFERENCES person (id),
  created_at TEXT NOT NULL,
  created_by TEXT NOT NULL REFERENCES person (id),
  done_at TEXT,
  done_by TEXT REFERENCES person (id),
  done_note TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX task_open ON task (due_on) WHERE done_at IS NULL;
`;

const undo = `
ALTER TABLE command ADD COLUMN undoes_id TEXT REFERENCES command (id);
CREATE UNIQUE INDEX command_undone_once ON command (undoes_id) WHERE undoes_id IS NOT NULL;
CREATE INDEX command_by_at ON command (at);
CREATE INDEX command_change_by_row ON command_change (table_name, row_id);

CREATE TRIGGER customer_search_out AFTER DELETE ON customer BEGIN
  DELETE FROM search WHERE kind = 'customer' AND ref = old.id;
END;
CREATE TRIGGER bow_search_out AFTER DELETE ON bow BEGIN
  DELETE FROM search WHERE kind = 'bow' AND ref = old.id;
END;
`;

/**
 * What version 1 noted in entries about the unpacking table becomes a record. Ids are made from
 * the order's own, so that the step gives the same rows wherever it runs.
 */
const carryOver = `
CREATE TEMP VIEW last_entry AS
  SELECT e.* FROM entry e
  WHERE e.struck_reason IS NULL AND e.outcome = 'ok' AND e.id = (
    SELECT id FROM entry l
    WHERE l.order_id = e.order_id AND l.item = e.item AND l.struck_reason IS NULL
    ORDER BY l.recorded_at DESC, l.id DESC LIMIT 1);

INSERT INTO arrival (
  id, order_id, opened_on, came_by, packaging, packaging_kept, packaging_damaged, condition,
  nothing_came_along, resting_since, looked_over, strung, not_strung_because, alignment,
  brace_in, tiller_in, string_track, note, person_id, completed_at, completed_by, row_version)
SELECT
  'arrival-' || o.id, o.id,
  coalesce(opened.done_on, condition.done_on, checked.done_on),
  coalesce(nullif(opened.note, ''), 'not recorded'),
  'not recorded', 0, 0,
  coalesce(condition.note, ''),
  coalesce(lower(trim(listed.note, ' .')) IN ('none', 'nothing'), 0), NULL,
  checked.id IS NOT NULL,
  CASE WHEN checked.id IS NULL THEN 'not-yet' WHEN checked.note LIKE '%not strung%' THEN 'not-strung' ELSE 'strung' END,
  CASE WHEN checked.note LIKE '%not strung%' THEN checked.note ELSE '' END,
  CASE WHEN checked.note LIKE '%not strung%' THEN '' ELSE coalesce(checked.note, '') END,
  NULL, NULL, '', '',
  coalesce(opened.person_id, condition.person_id, checked.person_id),
  checked.recorded_at, checked.person_id, 1
FROM shop_order o
LEFT JOIN last_entry opened ON opened.order_id = o.id AND opened.item = 'arrived-on'
LEFT JOIN last_entry condition ON condition.order_id = o.id AND condition.item = 'condition'
LEFT JOIN last_entry checked ON checked.order_id = o.id AND checked.item = 'arrival-check'
LEFT JOIN last_entry listed ON listed.order_id = o.id AND listed.item = 'belongings'
WHERE coalesce(opened.id, condition.id, checked.id) IS NOT NULL;

INSERT INTO belonging (id, order_id, what, back_at, back_by, back_note, row_version)
SELECT 'belonging-' || listed.order_id, listed.order_id, listed.note,
  back.recorded_at, back.person_id, coalesce(back.note, ''), 1
FROM last_entry listed
LEFT JOIN last_entry back ON back.order_id = listed.order_id AND back.item = 'belongings-back'
WHERE listed.item = 'belongings' AND lower(trim(listed.note, ' .')) NOT IN ('none', 'nothing');

DROP VIEW last_entry;
`;

/** Records of the whole flow: bows as they are, arrival, routes, shipping, photographs, tasks, undo. */
export const wholeFlow: Migration = {
  version: 2,
  name: 'whole flow',
  up(db) {
    db.exec(shop);
    db.exec(bows);
    db.exec(orders);
    db.exec(shipping);
    db.exec(attachments);
    db.exec(tasks);
    db.exec(undo);
    db.exec(carryOver);
  },
};
