import { arrival } from './arrival.ts';
import { attachments } from './attachments.ts';
import { bows } from './bows.ts';
import { carriers } from './carriers.ts';
import { consents } from './consents.ts';
import { customers } from './customers.ts';
import { entries } from './entries.ts';
import { finalCheck } from './final-check.ts';
import { find } from './find.ts';
import { findings } from './findings.ts';
import { geometry } from './geometry.ts';
import { incidents } from './incidents.ts';
import { intake } from './intake.ts';
import { limbSets } from './limb-sets.ts';
import { orders } from './orders.ts';
import { papers } from './papers.ts';
import { readings } from './readings.ts';
import { scales } from './scales.ts';
import { people, setup, shop } from './setup.ts';
import { shipments } from './shipments.ts';
import { system } from './system.ts';
import { tasks } from './tasks.ts';
import { today } from './today.ts';
import { undershoot } from './undershoot.ts';
import { undo } from './undo.ts';

/** Everything the program can be asked to do. Both doors carry exactly this. */
export const contract = {
  system,
  setup,
  shop,
  people,
  scales,
  customers,
  bows,
  limbSets,
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
  finalCheck,
  carriers,
  shipments,
  papers,
  tasks,
  today,
  find,
  undo,
};
export type Contract = typeof contract;
