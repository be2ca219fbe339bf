import type { Migration } from './migration.ts';

const records = `
CREATE TABLE shop (
  id TEXT PRIMARY KEY CHECK (id = 'shop'),
  name TEXT NOT NULL,
  street TEXT NOT NULL, city TEXT NOT NULL, region TEXT NOT NULL,
  postal_code TEXT NOT NULL, country TEXT NOT NULL,
  phone TEXT NOT NULL, email TEXT NOT NULL,
  paper_format TEXT NOT NULL CHECK (paper_format IN ('letter', 'a4')),
  tag_format TEXT NOT NULL CHECK (tag_format IN ('4x6', 'a6')),
  contents_on_tag INTEGER NOT NULL CHECK (contents_on_tag IN (0, 1)),
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE person (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  initials TEXT NOT NULL,
  role TEXT NOT NULL CHECK (role IN ('owner', 'office', 'bench')),
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE customer (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  email TEXT NOT NULL, phone TEXT NOT NULL,
  preferred_contact TEXT NOT NULL CHECK (preferred_contact IN ('email', 'phone', 'any')),
  street TEXT NOT NULL, city TEXT NOT NULL, region TEXT NOT NULL,
  postal_code TEXT NOT NULL, country TEXT NOT NULL,
  shooting_style TEXT NOT NULL CHECK (shooting_style IN ('split', 'three-under', 'unknown')),
  own_draw_in REAL,
  notes TEXT NOT NULL,
  created_at TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE bow (
  id TEXT PRIMARY KEY,
  customer_id TEXT REFERENCES customer (id),
  kind TEXT NOT NULL, construction TEXT NOT NULL, take_down TEXT NOT NULL, hand TEXT NOT NULL,
  maker TEXT NOT NULL, model TEXT NOT NULL, serial TEXT NOT NULL,
  amo_length_in REAL,
  marked_weight_lbf REAL, marked_draw_in REAL, marked_draw_reference TEXT NOT NULL,
  max_safe_draw_in REAL,
  facing TEXT NOT NULL,
  notes TEXT NOT NULL,
  created_at TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX bow_by_customer ON bow (customer_id);

CREATE TABLE order_counter (year INTEGER PRIMARY KEY, last INTEGER NOT NULL) STRICT;

CREATE TABLE shop_order (
  id TEXT PRIMARY KEY,
  number TEXT NOT NULL UNIQUE,
  customer_id TEXT REFERENCES customer (id),
  bow_id TEXT REFERENCES bow (id),
  services_json TEXT NOT NULL CHECK (json_valid(services_json)),
  route_json TEXT NOT NULL CHECK (json_valid(route_json)),
  stage TEXT NOT NULL,
  stage_since TEXT NOT NULL,
  target_weight_lbf REAL, target_draw_in REAL,
  tiller_target TEXT NOT NULL,
  promised_on TEXT,
  estimate_cents INTEGER,
  inscription TEXT NOT NULL,
  ship_to TEXT NOT NULL,
  private_notes TEXT NOT NULL, customer_notes TEXT NOT NULL,
  created_at TEXT NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX order_by_customer ON shop_order (customer_id);
CREATE INDEX order_by_bow ON shop_order (bow_id);
CREATE INDEX order_by_stage ON shop_order (stage);

CREATE TABLE hold (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  kind TEXT NOT NULL CHECK (kind IN ('customer', 'material', 'claim', 'other')),
  reason TEXT NOT NULL,
  since TEXT NOT NULL,
  remind_on TEXT,
  released_at TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX hold_by_order ON hold (order_id);

CREATE TABLE entry (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  item TEXT NOT NULL,
  outcome TEXT NOT NULL CHECK (outcome IN ('ok', 'not-ok')),
  done_on TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  note TEXT NOT NULL,
  override_reason TEXT,
  recorded_at TEXT NOT NULL,
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX entry_by_order ON entry (order_id);

CREATE TABLE finding (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT REFERENCES bow (id),
  grade TEXT NOT NULL CHECK (grade IN ('cosmetic', 'watch', 'stop')),
  place TEXT NOT NULL,
  note TEXT NOT NULL,
  found_at TEXT NOT NULL,
  found_by TEXT NOT NULL REFERENCES person (id),
  resolved_at TEXT, resolved_how TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX finding_by_order ON finding (order_id);

CREATE TABLE scale (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  resolution_lbf REAL NOT NULL,
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE scale_check (
  id TEXT PRIMARY KEY,
  scale_id TEXT NOT NULL REFERENCES scale (id),
  checked_at TEXT NOT NULL,
  checked_by TEXT NOT NULL REFERENCES person (id),
  low_load_lbf REAL NOT NULL, low_reading_lbf REAL NOT NULL,
  high_load_lbf REAL NOT NULL, high_reading_lbf REAL NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX scale_check_by_scale ON scale_check (scale_id, checked_at);

CREATE TABLE reading (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  bow_id TEXT NOT NULL REFERENCES bow (id),
  phase TEXT NOT NULL CHECK (phase IN ('arrival', 'work', 'after-sanding', 'final')),
  draw_reference TEXT NOT NULL CHECK (draw_reference IN ('amo', 'to-back', 'unknown')),
  scale_id TEXT NOT NULL REFERENCES scale (id),
  rig_zero_lbf REAL NOT NULL,
  brace_in REAL NOT NULL,
  string_note TEXT NOT NULL,
  support_point TEXT NOT NULL, pull_point TEXT NOT NULL,
  tiller_in REAL,
  temperature_f REAL,
  flexed_first INTEGER NOT NULL CHECK (flexed_first IN (0, 1)),
  note TEXT NOT NULL,
  weighed_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  scale_error_lbf REAL,
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX reading_by_order ON reading (order_id);
CREATE INDEX reading_by_bow ON reading (bow_id);

CREATE TABLE reading_pull (
  id TEXT PRIMARY KEY,
  reading_id TEXT NOT NULL REFERENCES reading (id),
  position INTEGER NOT NULL,
  draw_in REAL NOT NULL,
  force_lbf REAL NOT NULL,
  row_version INTEGER NOT NULL,
  UNIQUE (reading_id, position)
) STRICT;

CREATE TABLE consent (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  kind TEXT NOT NULL,
  text TEXT NOT NULL,
  text_sha256 TEXT NOT NULL,
  subject TEXT NOT NULL,
  subject_sha256 TEXT NOT NULL,
  asked_at TEXT NOT NULL,
  asked_how TEXT NOT NULL,
  asked_by TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX consent_by_order ON consent (order_id);

CREATE TABLE consent_answer (
  id TEXT PRIMARY KEY,
  consent_id TEXT NOT NULL REFERENCES consent (id),
  answer TEXT NOT NULL CHECK (answer IN ('granted', 'declined', 'withdrawn')),
  answered_at TEXT NOT NULL,
  channel TEXT NOT NULL CHECK (channel IN ('in-person', 'email', 'phone')),
  answered_by TEXT NOT NULL,
  contact TEXT NOT NULL,
  words TEXT NOT NULL,
  cost_change_cents INTEGER NOT NULL,
  text_sha256 TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  recorded_by TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX consent_answer_by_consent ON consent_answer (consent_id);

CREATE TABLE paper (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  kind TEXT NOT NULL,
  format TEXT NOT NULL,
  copy TEXT NOT NULL,
  action TEXT NOT NULL CHECK (action IN ('printed', 'saved')),
  file_name TEXT NOT NULL,
  pages INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  order_row_version INTEGER NOT NULL,
  made_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX paper_by_order ON paper (order_id);

CREATE TABLE order_history (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  kind TEXT NOT NULL,
  summary TEXT NOT NULL,
  from_stage TEXT, to_stage TEXT,
  reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX order_history_by_order ON order_history (order_id, at);
`;

const commands = `
CREATE TABLE command (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  person_id TEXT NOT NULL,
  device TEXT NOT NULL,
  at TEXT NOT NULL,
  order_id TEXT, bow_id TEXT, customer_id TEXT,
  result_json TEXT NOT NULL CHECK (json_valid(result_json))
) STRICT;
CREATE INDEX command_by_order ON command (order_id, at);

CREATE TABLE command_change (
  command_id TEXT NOT NULL REFERENCES command (id) DEFERRABLE INITIALLY DEFERRED,
  seq INTEGER NOT NULL,
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  before_json TEXT, after_json TEXT,
  row_version INTEGER NOT NULL,
  PRIMARY KEY (command_id, seq)
) STRICT;

CREATE TABLE draft (
  id TEXT PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('intake')),
  person_id TEXT NOT NULL,
  body_json TEXT NOT NULL CHECK (json_valid(body_json)),
  saved_at TEXT NOT NULL
) STRICT;
`;

/** What was done, said and agreed stays as it was written. */
const appendOnly = [
  'command',
  'command_change',
  'order_history',
  'consent',
  'consent_answer',
  'paper',
];

function guard(table: string): string {
  return ['UPDATE', 'DELETE']
    .map(
      (verb) => `CREATE TRIGGER ${table}_no_${verb.toLowerCase()} BEFORE ${verb} ON ${table}
        BEGIN SELECT RAISE(ABORT, '${table} is append-only'); END;`,
    )
    .join('\n');
}

const search = `
CREATE VIRTUAL TABLE search USING fts5 (
  kind UNINDEXED, ref UNINDEXED, words, tokenize = "unicode61 remove_diacritics 2", prefix = '1 2 3'
);

CREATE TRIGGER customer_search_in AFTER INSERT ON customer BEGIN
  INSERT INTO search (kind, ref, words) VALUES ('customer', new.id,
    concat_ws(' ', new.name, new.email, new.phone, new.city, new.postal_code));
END;
CREATE TRIGGER customer_search_up AFTER UPDATE ON customer BEGIN
  DELETE FROM search WHERE kind = 'customer' AND ref = old.id;
  INSERT INTO search (kind, ref, words) VALUES ('customer', new.id,
    concat_ws(' ', new.name, new.email, new.phone, new.city, new.postal_code));
END;
CREATE TRIGGER bow_search_in AFTER INSERT ON bow BEGIN
  INSERT INTO search (kind, ref, words) VALUES ('bow', new.id,
    concat_ws(' ', new.maker, new.model, new.serial, new.kind, new.amo_length_in, new.marked_weight_lbf));
END;
CREATE TRIGGER bow_search_up AFTER UPDATE ON bow BEGIN
  DELETE FROM search WHERE kind = 'bow' AND ref = old.id;
  INSERT INTO search (kind, ref, words) VALUES ('bow', new.id,
    concat_ws(' ', new.maker, new.model, new.serial, new.kind, new.amo_length_in, new.marked_weight_lbf));
END;
CREATE TRIGGER order_search_in AFTER INSERT ON shop_order BEGIN
  INSERT INTO search (kind, ref, words) VALUES ('order', new.id,
    concat_ws(' ', new.number, replace(new.number, '-', '')));
END;
`;

export const firstShop: Migration = {
  version: 1,
  name: 'first shop',
  up(db) {
    db.exec(records);
    db.exec(commands);
    db.exec(appendOnly.map(guard).join('\n'));
    db.exec(search);
  },
};
