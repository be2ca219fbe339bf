import type { Answer, Channel, ConsentKind } from '../../shared/consents.ts';
import type { PaperKind } from '../../shared/papers.ts';
import type { Flag, Row } from './row.ts';

export interface ConsentRow extends Row {
  order_id: string;
  kind: ConsentKind;
  text: string;
  text_sha256: string;
  subject: string;
  subject_sha256: string;
  asked_at: string;
  asked_how: string;
  asked_by: string;
  /** The wording of the shop it was made from; null where it was written before there were any. */
  wording_id: string | null;
}

export interface ConsentAnswerRow extends Row {
  consent_id: string;
  answer: Answer;
  answered_at: string;
  channel: Channel;
  answered_by: string;
  contact: string;
  words: string;
  cost_change_cents: number;
  text_sha256: string;
  recorded_at: string;
  recorded_by: string;
  /** Strokes as drawn on the screen. */
  signature_json: string | null;
  /** The message or photograph that shows the answer. */
  attachment_id: string | null;
}

export interface AttachmentRow extends Row {
  order_id: string | null;
  bow_id: string | null;
  finding_id: string | null;
  incident_id: string | null;
  shipment_id: string | null;
  about: 'bow' | 'packaging' | 'finding' | 'incident' | 'value' | 'message' | 'other';
  file_name: string;
  media_type: string;
  sha256: string;
  bytes: number;
  width_px: number | null;
  height_px: number | null;
  taken_at: string | null;
  has_location: Flag;
  caption: string;
  added_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface PaperRow extends Row {
  order_id: string | null;
  /** What it is about where that is not an order: a bow, a lot, a batch. */
  about_id: string | null;
  kind: PaperKind;
  format: string;
  copy: string;
  action: 'printed' | 'saved';
  file_name: string;
  pages: number;
  sha256: string;
  /** Of everything printed on it but the date: another one means the paper would come out different. */
  facts_sha256: string;
  order_row_version: number | null;
  made_at: string;
  person_id: string;
}

export interface KeptTables {
  consent: ConsentRow;
  consent_answer: ConsentAnswerRow;
  attachment: AttachmentRow;
  paper: PaperRow;
}
