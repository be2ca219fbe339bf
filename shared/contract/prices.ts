import {
  cents,
  changed,
  day,
  id,
  instant,
  line,
  reason,
  requiredLine,
  rowVersion,
} from '../fields.ts';
import { paymentKind, paymentMethod, priceLineKind } from '../money.ts';
import { service } from '../stages.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, officeRoles, ownerOnly, query } from './base.ts';

const minutes = z.int().min(0, 'Give minutes, 0 or more.').max(10_000, 'At most 10,000 minutes.');
const what = requiredLine(160);

/** A line of the shop's price list. `service`: asked for with it, so that it is offered then. */
export const priceServiceFields = z.strictObject({
  name: what,
  service: service.nullable(),
  /** 0: nobody has set a price yet. */
  priceCents: cents,
  minutes,
  taxable: z.boolean(),
});
export const priceService = z.object({
  id,
  rowVersion,
  ...priceServiceFields.shape,
  active: z.boolean(),
  position: z.int().min(0),
});
export type PriceService = z.infer<typeof priceService>;

export const pricePolicyFields = z.strictObject({
  taxName: requiredLine(40),
  /** Parts in a million of the taxed sum: 8.875 % is 88,750. */
  taxRatePpm: z.int().min(0).max(500_000, 'At most 50 %.'),
  depositPercent: z.int('Give a whole percent.').min(0).max(100),
  rushFeeCents: cents,
  returnFreightCents: cents,
});
export const pricePolicy = z.object({ rowVersion, ...pricePolicyFields.shape });
export type PricePolicy = z.infer<typeof pricePolicy>;

const quantity = z.int('Give a whole number.').min(1).max(999);

/** A line of an order's price. A discount is a positive amount, or a part of what stands above it. */
export const priceLineFields = z.strictObject({
  kind: priceLineKind,
  what,
  quantity,
  unitCents: cents,
  /** Hundredths of a percent; only of a discount, and instead of its amount. */
  discountBp: z.int().min(1, 'More than 0 %.').max(10_000, 'At most 100 %.').nullable(),
  taxable: z.boolean(),
  minutes,
});
export type PriceLineFields = z.infer<typeof priceLineFields>;

const signedCents = z.int().min(-1_000_000_000).max(1_000_000_000);

export const priceLine = z.object({
  id,
  rowVersion,
  ...priceLineFields.shape,
  priceServiceId: id.nullable(),
  /** What it adds to the price; of a discount below 0. */
  cents: signedCents,
});
export type PriceLine = z.infer<typeof priceLine>;

export const paymentFields = z.strictObject({
  kind: paymentKind,
  method: paymentMethod,
  cents: cents.min(1, 'Give an amount above nothing.'),
  receivedOn: day,
  reference: line(120),
  note: line(400),
});
export type PaymentFields = z.infer<typeof paymentFields>;

export const payment = z.object({
  id,
  rowVersion,
  ...paymentFields.shape,
  recordedAt: instant,
  recordedBy: line(120),
  struckReason: line(400).nullable(),
});
export type Payment = z.infer<typeof payment>;

/** A change of cost the customer agreed to in an answer, for which there is no line yet. */
export const agreedChange = z.object({
  answerId: id,
  cents: signedCents,
  agreedAt: instant,
  answeredBy: line(120),
  channel: line(40),
});
export type AgreedChange = z.infer<typeof agreedChange>;

/** What an order costs and what was paid. Without lines the estimate stands as one amount. */
export const orderPrice = z.object({
  lines: z.array(priceLine).max(200),
  /** Of the day the first line was written; null while there is none. */
  taxName: line(40).nullable(),
  taxRatePpm: z.int().min(0).nullable(),
  subtotalCents: signedCents,
  taxableCents: signedCents,
  taxCents: signedCents,
  /** Null while no price is set. */
  totalCents: signedCents.nullable(),
  depositPercent: z.int().min(0).max(100),
  depositCents: signedCents,
  receivedCents: signedCents,
  refundedCents: signedCents,
  balanceCents: signedCents.nullable(),
  /** Newest first, the struck-out ones too. */
  payments: z.array(payment).max(500),
  agreedChanges: z.array(agreedChange).max(200),
});
export type OrderPrice = z.infer<typeof orderPrice>;

export const prices = {
  services: query().input(nothing).output(z.array(priceService).max(300)),
  addService: command(ownerOnly).input(commandInput(priceServiceFields.shape)).output(changed),
  editService: command(ownerOnly)
    .input(commandInput({ id, rowVersion, ...priceServiceFields.shape, active: z.boolean() }))
    .output(changed),
  /** The whole list in its new order. */
  arrangeServices: command(ownerOnly)
    .input(commandInput({ ids: z.array(id).min(1).max(300) }))
    .output(z.object({ moved: z.int().min(0) })),
  /** Usual lines, one a service, each without a price. */
  addTypical: command(ownerOnly)
    .input(commandInput({}))
    .output(z.object({ added: z.int().min(0) })),
  policy: query().input(nothing).output(pricePolicy),
  /** Orders that have lines keep the tax they were made up with. */
  editPolicy: command(ownerOnly)
    .input(commandInput({ rowVersion, ...pricePolicyFields.shape }))
    .output(changed),
  /** Puts lines of the list on an order, at today's price. `rowVersion` is the order's, as below. */
  addFromList: command(officeRoles)
    .input(commandInput({ orderId: id, rowVersion, serviceIds: z.array(id).min(1).max(50) }))
    .output(changed),
  addLine: command(officeRoles)
    .input(
      commandInput({
        orderId: id,
        rowVersion,
        ...priceLineFields.shape,
        /** The customer's answer that agreed to this change of cost. */
        answerId: id.nullable(),
      }),
    )
    .output(changed),
  editLine: command(officeRoles)
    .input(commandInput({ id, rowVersion, ...priceLineFields.shape }))
    .output(changed),
  removeLine: command(officeRoles).input(commandInput({ id, rowVersion })).output(changed),
  /** Every line of the order, in its new order. */
  arrangeLines: command(officeRoles)
    .input(commandInput({ orderId: id, rowVersion, ids: z.array(id).min(1).max(200) }))
    .output(changed),
  recordPayment: command(officeRoles)
    .input(commandInput({ orderId: id, ...paymentFields.shape }))
    .output(changed),
  strikeOutPayment: command(officeRoles)
    .input(commandInput({ id, rowVersion, reason }))
    .output(changed),
};
