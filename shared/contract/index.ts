import { arrival } from './arrival.ts';
import { attachments } from './attachments.ts';
import { bench } from './bench.ts';
import { benchPolicy } from './bench-policy.ts';
import { bows } from './bows.ts';
import { care } from './care.ts';
import { carriers } from './carriers.ts';
import { clocks } from './clocks.ts';
import { consents } from './consents.ts';
import { customers } from './customers.ts';
import { entries } from './entries.ts';
import { finalCheck } from './final-check.ts';
import { find } from './find.ts';
import { findings } from './findings.ts';
import { finish } from './finish.ts';
import { geometry } from './geometry.ts';
import { incidents } from './incidents.ts';
import { inscriptions } from './inscriptions.ts';
import { intake } from './intake.ts';
import { learned } from './learned.ts';
import { limbSets } from './limb-sets.ts';
import { messages } from './messages.ts';
import { orders } from './orders.ts';
import { papers } from './papers.ts';
import { plans } from './plans.ts';
import { prices } from './prices.ts';
import { readings } from './readings.ts';
import { scales } from './scales.ts';
import { people, setup, shop } from './setup.ts';
import { shipments } from './shipments.ts';
import { stores } from './stores.ts';
import { system } from './system.ts';
import { tasks } from './tasks.ts';
import { today } from './today.ts';
import { undershoot } from './undershoot.ts';
import { undo } from './undo.ts';
import { wordings } from './wordings.ts';

/** Everything the program can be asked to do. Both doors carry exactly this. */
export const contract = {
  system,
  setup,
  shop,
  people,
  scales,
  customers,
  bows,
  bench,
  limbSets,
  benchPolicy,
  plans,
  learned,
  geometry,
  intake,
  orders,
  arrival,
  entries,
  findings,
  incidents,
  undershoot,
  attachments,
  readings,
  consents,
  wordings,
  messages,
  inscriptions,
  finalCheck,
  care,
  carriers,
  shipments,
  stores,
  papers,
  prices,
  tasks,
  today,
  finish,
  clocks,
  find,
  undo,
};
export type Contract = typeof contract;
