import { bows } from './bows.ts';
import { consents } from './consents.ts';
import { customers } from './customers.ts';
import { entries } from './entries.ts';
import { find } from './find.ts';
import { findings } from './findings.ts';
import { intake } from './intake.ts';
import { orders } from './orders.ts';
import { papers } from './papers.ts';
import { readings } from './readings.ts';
import { scales } from './scales.ts';
import { people, setup, shop } from './setup.ts';
import { system } from './system.ts';

/** Everything the program can be asked to do. Both doors carry exactly this. */
export const contract = {
  system,
  setup,
  shop,
  people,
  scales,
  customers,
  bows,
  intake,
  orders,
  entries,
  findings,
  readings,
  consents,
  papers,
  find,
};
export type Contract = typeof contract;
