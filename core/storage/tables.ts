import type { AgreementTables } from './agreement-tables.ts';
import type { BenchTables } from './bench-tables.ts';
import type { BowTables } from './bow-tables.ts';
import type { FinishTables } from './finish-tables.ts';
import type { KeptTables } from './kept-tables.ts';
import type { OrderTables } from './order-tables.ts';
import type { ReadingTables } from './reading-tables.ts';
import type { ShopTables } from './shop-tables.ts';

export type * from './agreement-tables.ts';
export type * from './bench-tables.ts';
export type * from './bow-tables.ts';
export type * from './finish-tables.ts';
export type * from './kept-tables.ts';
export type * from './order-tables.ts';
export type * from './reading-tables.ts';
export type * from './shop-tables.ts';

/** Tables that a command may write, with a history of every row. */
export interface RecordTables
  extends AgreementTables,
    BenchTables,
    BowTables,
    FinishTables,
    KeptTables,
    OrderTables,
    ReadingTables,
    ShopTables {}

export interface OrderCounterRow {
  year: number;
  last: number;
}

export interface CommandRow {
  id: string;
  name: string;
  person_id: string;
  device: string;
  at: string;
  order_id: string | null;
  bow_id: string | null;
  customer_id: string | null;
  result_json: string;
  /** The command this one took back. */
  undoes_id: string | null;
}

export interface CommandChangeRow {
  command_id: string;
  seq: number;
  table_name: string;
  row_id: string;
  before_json: string | null;
  after_json: string | null;
  row_version: number;
}

export interface DraftRow {
  id: string;
  kind: 'intake';
  person_id: string;
  body_json: string;
  saved_at: string;
}

export interface SearchRow {
  kind: 'customer' | 'bow' | 'order';
  ref: string;
  words: string;
  rank: number;
}

export interface Tables extends RecordTables {
  order_counter: OrderCounterRow;
  command: CommandRow;
  command_change: CommandChangeRow;
  draft: DraftRow;
  search: SearchRow;
}
