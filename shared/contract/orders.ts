import { cameAs } from '../bows.ts';
import {
  cents,
  changed,
  day,
  drawIn,
  forceLbf,
  id,
  instant,
  line,
  reason,
  requiredLine,
  rowVersion,
  text,
} from '../fields.ts';
import { missingItem, override, refused } from '../gates.ts';
import { planSummary } from '../plan-record.ts';
import { goingHome, service, stage } from '../stages.ts';
import { z } from '../zod.ts';
import { arrivalRecord, belonging } from './arrival.ts';
import { command, commandInput, officeRoles, ownerOnly, query } from './base.ts';
import { benchLog } from './bench-records.ts';
import { bow } from './bows.ts';
import { consent } from './consents.ts';
import { customer } from './customers.ts';
import { entry } from './entries.ts';
import { finalCheckRow } from './final-check.ts';
import { finding } from './findings.ts';
import { holdDetail, holdKinds } from './holds.ts';
import { incident } from './incidents.ts';
import { inscriptionLayoutRecord } from './inscriptions.ts';
import { limbSet } from './limb-sets.ts';
import { message } from './messages.ts';
import { orderCard } from './order-card.ts';
import { orderFinish } from './order-finish.ts';
import { paper, paperOffer } from './papers.ts';
import { orderPrice } from './prices.ts';
import { reading } from './readings.ts';
import { shipment } from './shipments.ts';
import { task } from './tasks.ts';
import { orderUndershoot } from './undershoot.ts';

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
  /** How and where the lines are put on the bow; none until somebody says. */
  inscriptionLayout: inscriptionLayoutRecord.nullable(),
  goingHomeReason: line(400),
  createdAt: instant,
  customer: customer.nullable(),
  bow: bow.nullable(),
  /** Limbs of a take-down the order is about; none for the bow's own. */
  limbSet: limbSet.nullable(),
  cameAs,
  /** Risers the standing weighings were taken on, where they were noted. */
  weighedOnRisers: z.array(line(200)).max(500),
  /** Next stage of the route and what it still needs; none once the bow has left. */
  next: z.object({ stage, missing: z.array(missingItem).max(100) }).nullable(),
  holds: z.array(holdDetail).max(200),
  /** What was recorded at the unpacking table, and what came along. */
  arrival: arrivalRecord.nullable(),
  belongings: z.array(belonging).max(500),
  entries: z.array(entry).max(2000),
  findings: z.array(finding).max(500),
  incidents: z.array(incident).max(200),
  undershoot: orderUndershoot,
  readings: z.array(reading).max(500),
  bench: benchLog,
  /** Accepted weight plans, newest first, the struck-out ones too. */
  plans: z.array(planSummary).max(100),
  consents: z.array(consent).max(200),
  /** Newest first, the struck-out ones too. */
  messages: z.array(message).max(1000),
  /** What the finish room recorded; what it means now is told by `finish.order`. */
  finish: orderFinish,
  finalCheck: z.array(finalCheckRow).max(40),
  /** Newest first, the struck-out ones too. */
  shipments: z.array(shipment).max(200),
  papers: z.array(paper).max(1000),
  /** Papers this order needs besides the usual ones and that did not go out yet. */
  paperOffers: z.array(paperOffer).max(5),
  price: orderPrice,
  tasks: z.array(task).max(500),
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
  /** Gives an order of an unknown sender, and its bow, to the customer whose it turned out to be. */
  identifyCustomer: command(officeRoles)
    .input(commandInput({ id, rowVersion, customerId: id }))
    .output(changed),
  /** Which limbs of a take-down the order is about, and whether they came without their riser. */
  setLimbSet: command()
    .input(commandInput({ id, rowVersion, limbSetId: id.nullable(), cameAs }))
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
  /**
   * Puts the bow on the way home from where it stands: only packing and the handover lie ahead.
   * A hold is released with it.
   */
  sendHome: command()
    .input(commandInput({ id, rowVersion, kind: goingHome, reason }))
    .output(changed),
  /** Back to the route of work; what stood packed is looked at anew. Reopens a cancelled request. */
  takeUpAgain: command(officeRoles).input(commandInput({ id, rowVersion, reason })).output(changed),
  /** Ends a request whose bow never came. */
  cancel: command(officeRoles).input(commandInput({ id, rowVersion, reason })).output(changed),
  /**
   * Waiting for the customer follows the shop's reminder days, with the days for storage fee and
   * unclaimed goods; `remindOn` replaces the first reminder.
   */
  hold: command()
    .input(
      commandInput({ id, rowVersion, kind: z.enum(holdKinds), reason, remindOn: day.nullable() }),
    )
    .output(changed),
  changeHold: command(officeRoles)
    .input(
      commandInput({
        id,
        rowVersion,
        remindOn: day.nullable(),
        storageFeeOn: day.nullable(),
        abandonedOn: day.nullable(),
      }),
    )
    .output(changed),
  /** Records a reminder that went out. The next day follows from the ladder, or is given by hand. */
  remind: command(officeRoles)
    .input(
      commandInput({
        id,
        rowVersion,
        how: requiredLine(120),
        note: text(1000),
        nextOn: day.optional(),
      }),
    )
    .output(changed),
  release: command().input(commandInput({ id, rowVersion })).output(changed),
};
