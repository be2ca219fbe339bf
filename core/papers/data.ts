import type { StripFacts } from '../../shared/weight-strip.ts';

export interface PaperPdf {
  bytes: Uint8Array;
  pages: number;
  fileName: string;
  title: string;
}

export interface Party {
  name: string;
  lines: string[];
}

export interface WorkOrderData {
  format: 'letter' | 'a4';
  /** The bench copy names a customer by first name and initial only. */
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
    inscription: string;
    notes: string;
    hold: string | null;
  };
  customer: (Party & { phone: string; email: string }) | null;
  bow: { line: string; facts: [string, string][]; notes: string } | null;
  stopFindings: string[];
  strip: StripFacts;
  stripDraw: string;
  weighings: { on: string; phase: string; weights: string; brace: string; scale: string }[];
  consents: { label: string; state: string }[];
  belongings: string;
  cautions: string[];
  stages: { label: string; by: string; on: string }[];
}

export interface ShippingTagData {
  format: '4x6' | 'a6';
  /** Only the office copy carries dimensions and value. */
  copy: 'parcel' | 'office';
  printedAt: string;
  number: string;
  from: Party;
  to: Party;
  /** Naming the contents outside is a shop setting, off by default. */
  contents: string | null;
  /** Carrier and tracking as recorded, or null. */
  carrier: string | null;
  /** A stop finding is open: the tag forbids stringing and drawing. */
  unsafe: boolean;
  declaredValue: string | null;
  box: string | null;
}
