import type { Migration } from './migration.ts';

const wording = `
CREATE TABLE wording (
  id TEXT PRIMARY KEY,
  use TEXT NOT NULL,
  version INTEGER NOT NULL,
  subject TEXT NOT NULL,
  body TEXT NOT NULL,
  written_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL,
  UNIQUE (use, version)
) STRICT;
`;

const consents = `
ALTER TABLE consent ADD COLUMN wording_id TEXT REFERENCES wording (id);
ALTER TABLE consent_answer ADD COLUMN signature_json TEXT
  CHECK (signature_json IS NULL OR json_valid(signature_json));
ALTER TABLE consent_answer ADD COLUMN attachment_id TEXT REFERENCES attachment (id);

CREATE TABLE consent_reminder (
  id TEXT PRIMARY KEY,
  consent_id TEXT NOT NULL REFERENCES consent (id),
  sent_at TEXT NOT NULL,
  how TEXT NOT NULL,
  note TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX consent_reminder_by_consent ON consent_reminder (consent_id);

CREATE TABLE message (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  use TEXT NOT NULL,
  channel TEXT NOT NULL CHECK (channel IN ('email', 'phone', 'letter', 'other')),
  to_whom TEXT NOT NULL,
  subject TEXT NOT NULL,
  body TEXT NOT NULL,
  papers_json TEXT NOT NULL CHECK (json_valid(papers_json)),
  handed TEXT NOT NULL CHECK (handed IN ('copied', 'mail-program', 'file', 'noted')),
  sent_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX message_by_order ON message (order_id);

CREATE TABLE inscription (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL UNIQUE REFERENCES shop_order (id),
  position TEXT NOT NULL,
  surface TEXT NOT NULL CHECK (surface IN ('bare', 'sealed')),
  manner TEXT NOT NULL CHECK (manner IN ('hand', 'label')),
  ink TEXT NOT NULL,
  letter_height_in REAL NOT NULL,
  maker_mark TEXT NOT NULL,
  old_marking TEXT NOT NULL,
  note TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
`;

const money = `
ALTER TABLE shop ADD COLUMN tax_name TEXT NOT NULL DEFAULT 'Sales tax';
ALTER TABLE shop ADD COLUMN tax_rate_ppm INTEGER NOT NULL DEFAULT 0;
ALTER TABLE shop ADD COLUMN deposit_percent INTEGER NOT NULL DEFAULT 0;
ALTER TABLE shop ADD COLUMN rush_fee_cents INTEGER NOT NULL DEFAULT 0;
ALTER TABLE shop ADD COLUMN return_freight_cents INTEGER NOT NULL DEFAULT 0;
ALTER TABLE shop ADD COLUMN marking_round_lbf REAL NOT NULL DEFAULT 1;
ALTER TABLE shop ADD COLUMN arrow_grains_per_lb REAL NOT NULL DEFAULT 9;
ALTER TABLE shop ADD COLUMN care_terms TEXT NOT NULL DEFAULT '';
ALTER TABLE shop_order ADD COLUMN tax_name TEXT;
ALTER TABLE shop_order ADD COLUMN tax_rate_ppm INTEGER;
ALTER TABLE bow ADD COLUMN brace_low_in REAL;
ALTER TABLE bow ADD COLUMN brace_high_in REAL;
ALTER TABLE bow ADD COLUMN listed_species TEXT NOT NULL DEFAULT 'unknown'
  CHECK (listed_species IN ('none', 'listed', 'unknown'));

CREATE TABLE price_service (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  service TEXT,
  price_cents INTEGER NOT NULL,
  minutes INTEGER NOT NULL,
  taxable INTEGER NOT NULL CHECK (taxable IN (0, 1)),
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  position INTEGER NOT NULL,
  row_version INTEGER NOT NULL
) STRICT;

CREATE TABLE price_line (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  price_service_id TEXT REFERENCES price_service (id),
  position INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('service', 'material', 'discount', 'rush', 'freight', 'other')),
  what TEXT NOT NULL,
  quantity INTEGER NOT NULL,
  unit_cents INTEGER NOT NULL,
  discount_bp INTEGER,
  taxable INTEGER NOT NULL CHECK (taxable IN (0, 1)),
  minutes INTEGER NOT NULL,
  consent_answer_id TEXT REFERENCES consent_answer (id),
  removed_at TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX price_line_by_order ON price_line (order_id);

CREATE TABLE payment (
  id TEXT PRIMARY KEY,
  order_id TEXT NOT NULL REFERENCES shop_order (id),
  kind TEXT NOT NULL CHECK (kind IN ('deposit', 'payment', 'refund')),
  method TEXT NOT NULL,
  cents INTEGER NOT NULL CHECK (cents > 0),
  received_on TEXT NOT NULL,
  reference TEXT NOT NULL,
  note TEXT NOT NULL,
  recorded_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  struck_reason TEXT,
  row_version INTEGER NOT NULL
) STRICT;
CREATE INDEX payment_by_order ON payment (order_id);
`;

/** A paper may be about something other than an order: a bow in a what-if, a lot, a batch. */
const papers = `
CREATE TABLE paper_about (
  id TEXT PRIMARY KEY,
  order_id TEXT REFERENCES shop_order (id),
  about_id TEXT,
  kind TEXT NOT NULL,
  format TEXT NOT NULL,
  copy TEXT NOT NULL,
  action TEXT NOT NULL CHECK (action IN ('printed', 'saved')),
  file_name TEXT NOT NULL,
  pages INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  facts_sha256 TEXT NOT NULL,
  order_row_version INTEGER,
  made_at TEXT NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id),
  row_version INTEGER NOT NULL
) STRICT;
INSERT INTO paper_about (
  id, order_id, about_id, kind, format, copy, action, file_name, pages, sha256, facts_sha256,
  order_row_version, made_at, person_id, row_version)
SELECT id, order_id, NULL, kind, format, copy, action, file_name, pages, sha256, '',
  order_row_version, made_at, person_id, row_version FROM paper;
DROP TABLE paper;
ALTER TABLE paper_about RENAME TO paper;
CREATE INDEX paper_by_order ON paper (order_id);
CREATE INDEX paper_by_kind ON paper (kind, made_at);
`;

/** What was worded, asked and handed out stays as it was. */
const appendOnly = ['wording', 'consent_reminder', 'paper']
  .flatMap((table) =>
    ['UPDATE', 'DELETE'].map(
      (verb) => `CREATE TRIGGER ${table}_no_${verb.toLowerCase()} BEFORE ${verb} ON ${table}
        BEGIN SELECT RAISE(ABORT, '${table} is append-only'); END;`,
    ),
  )
  .join('\n');

/** Records of what is agreed: wordings, signatures, messages, inscription, price; papers about anything. */
export const agreementAndPapers: Migration = {
  version: 4,
  name: 'agreement and papers',
  up(db) {
    db.exec(wording);
    db.exec(consents);
    db.exec(money);
    db.exec(papers);
    db.exec(appendOnly);
  },
};
