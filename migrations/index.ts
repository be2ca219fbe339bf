import { firstShop } from './0001-first-shop.ts';
import { wholeFlow } from './0002-whole-flow.ts';
import { weightBench } from './0003-weight-bench.ts';
import { agreementAndPapers } from './0004-agreement-and-papers.ts';
import { storesAndFinish } from './0005-stores-and-finish.ts';
import type { Migration } from './migration.ts';

/** Every step in order. A step that has shipped is never changed; a new one is added below it. */
export const migrations: readonly Migration[] = [
  firstShop,
  wholeFlow,
  weightBench,
  agreementAndPapers,
  storesAndFinish,
];
