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
  text,
} from '../fields.ts';
import { grit, sizedGrit } from '../grit.ts';
import { hazard } from '../hazards.ts';
import { category, moveKind, runOutPercent, stockMark, stockUnit } from '../stores.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, query } from './base.ts';

const above = (max: number, what: string) =>
  z
    .number()
    .gt(0, `${what} must be more than 0.`)
    .max(max, `${what} is at most ${max.toLocaleString('en-US')}.`);
const spread = (max: number, what: string) =>
  z.number().min(0, `${what} cannot be less than 0.`).max(max);
const amount = above(1_000_000, 'The amount');
/** On hand and moves, in the unit the consumable is counted in. */
const stock = z.number();
const weeks = z.number().nullable();

export const consumableFields = z.strictObject({
  name: requiredLine(120),
  category,
  unit: stockUnit,
  /** Only of abrasives. */
  grit: grit.nullable(),
  /** As it is printed on what is bought; empty: the shop gives it one of its own. */
  barcode: line(40),
  shelf: line(60),
  /** As somebody reckons it, in the counted unit; what was issued counts once there is enough of it. */
  weeklyUse: above(100_000, 'The use in a week').nullable(),
  weeklyUseSpread: spread(100_000, 'The spread of the use').nullable(),
  waitWeeks: above(104, 'The wait for a delivery').nullable(),
  waitWeeksSpread: spread(104, 'The spread of the wait').nullable(),
  /** Chance of running out before the delivery that the shop puts up with; 5 where not said. */
  runOutPercent: runOutPercent.nullable(),
  /** What is ordered at a time; null: as much as the wait for a delivery takes. */
  orderQuantity: above(1_000_000, 'The order quantity').nullable(),
  openedDays: z.int().min(1, 'At least a day.').max(3650, 'At most ten years.').nullable(),
  hazards: z.array(hazard).max(10),
  note: text(2000),
});
export type ConsumableFields = z.infer<typeof consumableFields>;

/** A consumable of which nothing is known yet but what most of them share. */
export const blankConsumable: ConsumableFields = {
  name: '',
  category: 'other',
  unit: 'each',
  grit: null,
  barcode: '',
  shelf: '',
  weeklyUse: null,
  weeklyUseSpread: null,
  waitWeeks: null,
  waitWeeksSpread: null,
  runOutPercent: 5,
  orderQuantity: null,
  openedDays: null,
  hazards: [],
  note: '',
};

/** The unit is chosen once: what was ever received, issued and counted is in it. */
const editedFields = consumableFields.omit({ unit: true });

/** When to order, and what that rests on. Amounts in the counted unit, times in weeks. */
export const reorderFacts = z.object({
  /** Null where nobody knows. */
  weeklyUse: z.number().nullable(),
  weeklyUseSpread: z.number().nullable(),
  /** `moves`: from what was issued in so many weeks; `entered`: as somebody reckons it. */
  useFrom: z.enum(['moves', 'entered', 'none']),
  useWeeks: z.int().nullable(),
  safetyStock: z.number().nullable(),
  reorderAt: z.number().nullable(),
  coverageWeeks: weeks,
  toOrder: z.boolean(),
  /** What to order; null where nothing is to be ordered, or nobody can tell how much. */
  orderQuantity: z.number().nullable(),
  /** Why it is or is not time to order, or what to fill in to know. */
  sentence: line(400),
});
export type ReorderFacts = z.infer<typeof reorderFacts>;

export const consumableSummary = z.object({
  id,
  rowVersion,
  name: line(120),
  category,
  unit: stockUnit,
  grit: sizedGrit.nullable(),
  barcode: line(40),
  shelf: line(60),
  hazards: z.array(hazard).max(10),
  active: z.boolean(),
  onHand: stock,
  inDate: stock,
  onOrder: stock,
  /** Last day of the lot that is used next; null where it does not expire or none is in date. */
  nextLastDay: day.nullable(),
  coverageWeeks: weeks,
  marks: z.array(stockMark).max(4),
});
export type ConsumableSummary = z.infer<typeof consumableSummary>;

export const lot = z.object({
  id,
  rowVersion,
  consumableId: id,
  /** As printed on it; empty where none is. */
  number: line(80),
  /** Of the shop's own label. */
  barcode: line(40),
  receivedOn: day,
  expiresOn: day.nullable(),
  openedOn: day.nullable(),
  /** Last day it may be used: the earlier of the printed day and what opening leaves. */
  lastDay: day.nullable(),
  expired: z.boolean(),
  /** It is used before all others. */
  next: z.boolean(),
  costCents: cents.nullable(),
  note: text(1000),
  onHand: stock,
});
export type Lot = z.infer<typeof lot>;

export const stockMove = z.object({
  id,
  at: instant,
  personName: line(120),
  kind: moveKind,
  quantity: stock,
  lotId: id,
  lotName: line(120),
  orderId: id.nullable(),
  orderNumber: line(40).nullable(),
  batchName: line(200).nullable(),
  reason: line(400),
});
export type StockMove = z.infer<typeof stockMove>;

export const consumableDetail = z.object({
  id,
  rowVersion,
  ...consumableFields.shape,
  grit: sizedGrit.nullable(),
  active: z.boolean(),
  onHand: stock,
  inDate: stock,
  onOrder: stock,
  marks: z.array(stockMark).max(4),
  reorder: reorderFacts,
  /** In the order they are used; the empty ones last. */
  lots: z.array(lot).max(1000),
  /** Newest first. */
  moves: z.array(stockMove).max(300),
  moreMoves: z.boolean(),
  cautions: z.array(line(400)).max(10),
});
export type ConsumableDetail = z.infer<typeof consumableDetail>;

/** What of one hazard stands on the shelves, and what to do about it. */
export const storesCaution = z.object({
  hazard,
  /** Names of what it is about. */
  about: z.array(line(120)).max(300),
  sentences: z.array(line(500)).max(6),
});
export type StoresCaution = z.infer<typeof storesCaution>;

export const shoppingItem = z.object({
  consumableId: id,
  /** Of the consumable, for noting that it was ordered. */
  rowVersion,
  name: line(120),
  category,
  unit: stockUnit,
  /** Null where nobody can tell how much. */
  quantity: z.number().nullable(),
  inDate: stock,
  onOrder: stock,
  why: line(400),
});
export type ShoppingItem = z.infer<typeof shoppingItem>;

export const expiringLot = z.object({
  consumableId: id,
  name: line(120),
  unit: stockUnit,
  lotId: id,
  lotName: line(120),
  lastDay: day,
  expired: z.boolean(),
  onHand: stock,
});
export type ExpiringLot = z.infer<typeof expiringLot>;

export const pick = z.object({
  lotId: id,
  lotName: line(120),
  quantity: z.number(),
  lastDay: day.nullable(),
});
export type Pick = z.infer<typeof pick>;

/** What would be taken from which lot; nothing is written. */
export const issuePreview = z.object({
  unit: stockUnit,
  picks: z.array(pick).max(1000),
  shortBy: z.number(),
  expired: z.array(line(120)).max(1000),
  /** Why it cannot be issued; null where it can. */
  sentence: line(500).nullable(),
});
export type IssuePreview = z.infer<typeof issuePreview>;

export const lotFields = z.strictObject({
  number: line(80),
  receivedOn: day,
  expiresOn: day.nullable(),
  /** What the container cost. */
  costCents: cents.nullable(),
  note: text(1000),
});

const given = { quantity: amount, unit: stockUnit };

export const stores = {
  list: query()
    .input(nothing)
    .output(
      z.object({
        today: day,
        /** By category; abrasives by grain size, coarsest first. Put-away ones last. */
        consumables: z.array(consumableSummary).max(2000),
        expiring: z.array(expiringLot).max(2000),
        cautions: z.array(storesCaution).max(10),
        /** Under all cautions: who has the last word. */
        whoDecides: line(200),
      }),
    ),
  get: query().input(z.strictObject({ id })).output(consumableDetail),
  /** A lot alone, as its label leads to it. */
  lot: query()
    .input(z.strictObject({ id }))
    .output(z.object({ consumableId: id, name: line(120), unit: stockUnit, lot })),
  shoppingList: query()
    .input(nothing)
    .output(z.object({ today: day, items: z.array(shoppingItem).max(2000) })),
  /** Every grit of both scales, coarsest first, whatever its number. */
  grits: query().input(nothing).output(z.array(sizedGrit).max(200)),
  wouldIssue: query()
    .input(z.strictObject({ consumableId: id, ...given }))
    .output(issuePreview),
  addConsumable: command().input(commandInput(consumableFields.shape)).output(changed),
  editConsumable: command()
    .input(commandInput({ id, rowVersion, ...editedFields.shape, active: z.boolean() }))
    .output(changed),
  /** What was ordered and has not come; receiving takes off what came. */
  noteOrdered: command()
    .input(commandInput({ id, rowVersion, onOrder: spread(1_000_000, 'What is on order') }))
    .output(changed),
  /** Each container is a lot of its own: it is opened, labelled and used up by itself. */
  receive: command()
    .input(
      commandInput({
        consumableId: id,
        ...lotFields.shape,
        containers: z.int().min(1, 'At least one.').max(50, 'At most 50 at a time.'),
        /** In each container. */
        ...given,
      }),
    )
    .output(z.object({ lotIds: z.array(id).min(1).max(50) })),
  editLot: command()
    .input(commandInput({ id, rowVersion, ...lotFields.shape, openedOn: day.nullable() }))
    .output(changed),
  /** Opens a container; what keeps a shorter time once opened then counts from this day. */
  openLot: command()
    .input(commandInput({ id, rowVersion, openedOn: day }))
    .output(changed),
  /** First expired, first out; or from one lot. */
  issue: command()
    .input(
      commandInput({
        consumableId: id,
        lotId: id.nullable(),
        ...given,
        orderId: id.nullable(),
        reason: line(400),
      }),
    )
    .output(z.object({ picks: z.array(pick).min(1).max(1000) })),
  /** What was found on the shelf; the difference is written as a move. */
  count: command()
    .input(
      commandInput({
        lotId: id,
        quantity: spread(1_000_000, 'The amount'),
        unit: stockUnit,
        reason,
      }),
    )
    .output(z.object({ difference: stock, onHand: stock })),
  discard: command()
    .input(commandInput({ lotId: id, ...given, reason }))
    .output(z.object({ onHand: stock })),
  /** Books back what was issued and not used. */
  bookBack: command()
    .input(commandInput({ lotId: id, ...given, orderId: id.nullable(), reason }))
    .output(z.object({ onHand: stock })),
};
