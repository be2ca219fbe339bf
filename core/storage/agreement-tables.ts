import type { PaymentKind, PaymentMethod, PriceLineKind } from '../../shared/money.ts';
import type { Service } from '../../shared/stages.ts';
import type { Flag, Row } from './row.ts';

export interface WordingRow extends Row {
  /** `consent:marking-approval`, `message:arrived`. */
  use: string;
  version: number;
  subject: string;
  body: string;
  written_at: string;
  person_id: string;
}

export interface ConsentReminderRow extends Row {
  consent_id: string;
  sent_at: string;
  how: string;
  note: string;
  person_id: string;
}

export interface MessageRow extends Row {
  order_id: string;
  use: string;
  channel: 'email' | 'phone' | 'letter' | 'other';
  to_whom: string;
  subject: string;
  body: string;
  papers_json: string;
  handed: 'copied' | 'mail-program' | 'file' | 'noted';
  sent_at: string;
  person_id: string;
  struck_reason: string | null;
}

/** How the lines of an order are put on the bow; the lines themselves stand on the order. */
export interface InscriptionRow extends Row {
  order_id: string;
  position: string;
  surface: 'bare' | 'sealed';
  manner: 'hand' | 'label';
  ink: string;
  letter_height_in: number;
  maker_mark: string;
  old_marking: string;
  note: string;
  recorded_at: string;
  person_id: string;
}

export interface PriceServiceRow extends Row {
  name: string;
  service: Service | null;
  price_cents: number;
  minutes: number;
  taxable: Flag;
  active: Flag;
  position: number;
}

export interface PriceLineRow extends Row {
  order_id: string;
  price_service_id: string | null;
  position: number;
  kind: PriceLineKind;
  what: string;
  quantity: number;
  unit_cents: number;
  /** Of a discount in hundredths of a percent; null where it is an amount. */
  discount_bp: number | null;
  taxable: Flag;
  minutes: number;
  /** The customer's answer that agreed to this change of cost. */
  consent_answer_id: string | null;
  removed_at: string | null;
}

export interface PaymentRow extends Row {
  order_id: string;
  kind: PaymentKind;
  method: PaymentMethod;
  cents: number;
  received_on: string;
  reference: string;
  note: string;
  recorded_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface AgreementTables {
  wording: WordingRow;
  consent_reminder: ConsentReminderRow;
  message: MessageRow;
  inscription: InscriptionRow;
  price_service: PriceServiceRow;
  price_line: PriceLineRow;
  payment: PaymentRow;
}
