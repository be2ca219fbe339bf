import type { StripFacts } from '../../shared/weight-strip.ts';
import type { PriceTables } from './price-tables.ts';
import type { WorkOrderPlan } from './work-order-plan.ts';

/** A finished paper. */
export interface PaperPdf {
  bytes: Uint8Array;
  pages: number;
  fileName: string;
  title: string;
}

/** Who stands in a "from" or "to" block. */
export interface Party {
  name: string;
  lines: string[];
}

/** A line of the weight history; the caller writes each weight with its draw and reference. */
export interface WeighingLine {
  on: string;
  phase: string;
  weights: string;
  brace: string;
  scale: string;
}

/** A stage to sign; empty texts are left as blanks for the pen. */
export interface StageLine {
  label: string;
  by: string;
  on: string;
}

export interface ConsentLine {
  label: string;
  state: string;
  /** Date of the answer, where there is one. */
  on?: string;
}

export interface WorkOrderData {
  format: 'letter' | 'a4';
  /** The bench copy shows a customer by first name and initial, without address, phone or email. */
  copy: 'bench' | 'office';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  order: {
    number: string;
    createdOn: string;
    promisedOn: string | null;
    stage: string;
    services: string[];
    target: string | null;
    tiller: string;
    /** What the customer may read; private notes never reach a paper. */
    notes: string;
    hold: string | null;
  };
  /** null: the shop's own bow. */
  customer: (Party & { phone: string; email: string }) | null;
  bow: { line: string; facts: [string, string][]; notes: string } | null;
  /** Open stop findings: with any, the paper forbids stringing and drawing. */
  stopFindings: string[];
  strip: StripFacts;
  /** Draw the strip's weights belong to, e.g. `28" AMO`. */
  stripDraw: string;
  weighings: WeighingLine[];
  consents: ConsentLine[];
  belongings: string;
  /** Printed beside the bench tables, where the work is done. */
  cautions: string[];
  /** Places along the limb to measure width at, as written on the limb; blanks where unknown. */
  stations?: string[];
  /** null: no weight plan is accepted. */
  plan: WorkOrderPlan | null;
  /** Lines, where and how; empty where nothing is to be written on the bow. */
  lettering: [string, string][];
  /** What is on record of the finish, blanks for the rest; empty where none goes on. */
  finish: [string, string][];
  /** Only the office copy says what it costs; null: no price is set. */
  price: PriceTables | null;
  stages: StageLine[];
}

export interface ShippingTagData {
  format: '4x6' | 'a6';
  /** Only the office copy carries dimensions and value. */
  copy: 'parcel' | 'office';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  number: string;
  from: Party;
  to: Party;
  /** Naming the contents outside is a shop setting, off by default. */
  contents: string | null;
  /** Carrier, service and tracking as recorded, or null. */
  carrier: string | null;
  declaredValue: string | null;
  box: string | null;
}
