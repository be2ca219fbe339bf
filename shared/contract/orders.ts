import {
  cents,
  changed,
  day,
  drawIn,
  forceLbf,
  id,
  instant,
  line,
  rowVersion,
  text,
} from '../fields.ts';
import { missingItem, override, refused } from '../gates.ts';
import { service, stage } from '../stages.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles, ownerOnly, query } from './base.ts';
import { bow } from './bows.ts';
import { consent } from './consents.ts';
import { customer } from './customers.ts';
import { entry } from './entries.ts';
import { finding } from './findings.ts';
import { hold, holdKinds, orderCard } from './order-card.ts';
import { paper } from './papers.ts';
import { reading } from './readings.ts';

export const historyItem = z.object({
  id,
  at: instant,
  personName: line(120),
  kind: line(40),
  summary: line(1000),
  fromStage: stage.nullable(),
  toStage: stage.nullable(),
  reason: line(400).nullable(),
});
export type HistoryItem = z.infer<typeof historyItem>;

const reason = line(400).min(3, 'Give the reason in a few words.');

/** What the office may change of an order without moving it. */
export const orderFields = z.strictObject({
  services: z.array(service).min(1, 'Choose at least one service.').max(7),
  targetWeightLbf: forceLbf.nullable(),
  targetDrawIn: drawIn.nullable(),
  tillerTarget: line(200),
  promisedOn: day.nullable(),
  estimateCents: cents.nullable(),
  shipTo: text(600),
  privateNotes: text(4000),
  customerNotes: text(4000),
});
export type OrderFields = z.infer<typeof orderFields>;

export const orderDetail = z.object({
  card: orderCard,
  ...orderFields.shape,
  inscription: text(400),
  createdAt: instant,
  customer: customer.nullable(),
  bow: bow.nullable(),
  /** Next stage of the route and what it still needs; none once the bow has left. */
  next: z.object({ stage, missing: z.array(missingItem).max(100) }).nullable(),
  holds: z.array(hold).max(200),
  entries: z.array(entry).max(2000),
  findings: z.array(finding).max(500),
  readings: z.array(reading).max(500),
  consents: z.array(consent).max(200),
  papers: z.array(paper).max(1000),
  history: z.array(historyItem).max(5000),
});
export type OrderDetail = z.infer<typeof orderDetail>;

export const moveResult = z.discriminatedUnion('outcome', [
  z.object({ outcome: z.literal('moved'), id, rowVersion, stage }),
  refused,
]);
export type MoveResult = z.infer<typeof moveResult>;

export const orders = {
  /** Orders in work, and those that left in the last two weeks. */
  board: query()
    .input(z.strictObject({ includeClosed: z.boolean() }))
    .output(z.array(orderCard).max(2000)),
  get: query().input(z.strictObject({ id })).output(orderDetail),
  edit: command(officeRoles)
    .input(commandInput({ id, rowVersion, ...orderFields.shape }))
    .output(changed),
  /** Puts a bow, and with it its owner, on an order that came without one. */
  identifyBow: command()
    .input(commandInput({ id, rowVersion, bowId: id }))
    .output(changed),
  /** The exact lines to be written on the bow. A change voids the approval of the old ones. */
  setInscription: command(officeRoles)
    .input(commandInput({ id, rowVersion, inscription: text(400) }))
    .output(changed),
  /**
   * Moves along the route. Forward passes every gate on the way, or answers what is missing;
   * backward needs a reason. Only the owner overrides, and never a gate marked so.
   */
  move: command()
    .input(
      commandInput({
        id,
        rowVersion,
        to: stage,
        reason: reason.optional(),
        override: override.optional(),
      }),
    )
    .output(moveResult),
  /** Whether strip & sand comes before the weight work, as thinning needs. */
  setStripFirst: command(ownerOnly)
    .input(commandInput({ id, rowVersion, stripFirst: z.boolean() }))
    .output(changed),
  /** Whether the bow goes back by parcel or is collected over the counter. */
  setHandover: command(officeRoles)
    .input(commandInput({ id, rowVersion, handover: z.enum(['shipped', 'collected']) }))
    .output(changed),
  hold: command()
    .input(
      commandInput({ id, rowVersion, kind: z.enum(holdKinds), reason, remindOn: day.nullable() }),
    )
    .output(changed),
  release: command().input(commandInput({ id, rowVersion })).output(changed),
};
