import { between, changed, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import { bowSection, bowSections, cureStep, substrate } from '../finish.ts';
import { finishSheet } from '../finish-sheet.ts';
import { override } from '../gates.ts';
import { grit } from '../grit.ts';
import { z } from '../zod.ts';
import { airLook, airReading } from './air.ts';
import { command, commandInput, nothing, officeRoles, ownerOnly, query } from './base.ts';
import { sessionFields, sessionLook, sprayed } from './coats.ts';
import {
  airF,
  doneAt,
  humidityPercent,
  number,
  sentence,
  sentences,
  surfaceF,
} from './finish-fields.ts';
import { finishSystem, systemFields } from './finish-systems.ts';
import { batch, mixPlan, mixResult, wanted } from './mixing.ts';
import { cureTime, lastGrit, orderFinishNow, recoatWindow } from './order-finish.ts';

export type * from './air.ts';
export type * from './coats.ts';
export type * from './finish-systems.ts';
export type * from './mixing.ts';
export type * from './order-finish.ts';

const roomBow = z.object({
  orderId: id,
  number: line(40),
  bowLine: line(400),
  customerName: line(200),
  stage: z.enum(['strip-sand', 'finish', 'cure']),
  onHold: z.boolean(),
  finishSystemId: id.nullable(),
  finishName: line(120),
  coatsOn: z.int(),
  coatsFrom: z.int().nullable(),
  coatsTo: z.int().nullable(),
  lastCoatAt: instant.nullable(),
  window: recoatWindow.nullable(),
  lastGrits: z.array(lastGrit).max(20),
  cure: z.array(cureTime).max(4),
  passed: z.array(cureStep).max(4),
  areaIn2: number.nullable(),
  /** Lettering is on its route. */
  lettered: z.boolean(),
});
export type RoomBow = z.infer<typeof roomBow>;

const room = z.object({
  now: instant,
  systems: z.array(finishSystem).max(200),
  /** Not discarded and not long past. */
  batches: z.array(batch).max(100),
  air: airReading.nullable(),
  bows: z.array(roomBow).max(500),
  slots: z.object({ used: z.int(), all: z.int() }),
  transferPercent: number,
  clockTrouble: sentence.nullable(),
});
export type FinishRoom = z.infer<typeof room>;

const policyFields = {
  /** Places on the drying rack, bows a day. */
  rackSlots: z.int().min(1, 'Give one place or more.').max(200),
  /** Part of a sprayed finish that reaches the work, percent. */
  transferPercent: between(1, 100, 'Between 1 and 100 percent.'),
};

export const finish = {
  /** Names of the systems first in use, then the rest. */
  systems: query()
    .input(z.strictObject({ includeInactive: z.boolean() }))
    .output(z.array(finishSystem).max(200)),
  /** What to put right on a sheet, at the field it belongs to; empty where it can be used. */
  checkSheet: query()
    .input(z.strictObject({ sheet: finishSheet }))
    .output(z.array(z.object({ field: line(100), sentence })).max(60)),
  addSystem: command(officeRoles)
    .input(commandInput({ ...systemFields }))
    .output(changed),
  /** Batches and orders keep the sheet they were begun with. */
  editSystem: command(officeRoles)
    .input(commandInput({ id, rowVersion, ...systemFields }))
    .output(changed),
  policy: query()
    .input(nothing)
    .output(z.object({ rowVersion, ...policyFields })),
  editPolicy: command(ownerOnly)
    .input(commandInput({ rowVersion, ...policyFields }))
    .output(changed),

  /** The finish of an order, its sheet frozen; `rowVersion` null for the first choice. */
  choose: command()
    .input(commandInput({ orderId: id, finishSystemId: id, rowVersion: rowVersion.nullable() }))
    .output(changed),
  order: query()
    .input(z.strictObject({ orderId: id }))
    .output(orderFinishNow),

  /** Air as typed, before it is recorded. */
  lookAtAir: query()
    .input(
      z.strictObject({
        airF,
        humidityPercent,
        surfaceF: surfaceF.nullable(),
        finishSystemId: id.nullable(),
      }),
    )
    .output(airLook),
  recordAir: command()
    .input(
      commandInput({
        airF,
        humidityPercent,
        surfaceF: surfaceF.nullable(),
        note: text(1000),
        at: doneAt,
      }),
    )
    .output(changed),
  strikeOutAir: command().input(commandInput({ id, rowVersion, reason })).output(changed),
  /** Newest first. */
  airReadings: query().input(nothing).output(z.array(airReading).max(200)),

  planMix: query()
    .input(z.strictObject({ finishSystemId: id, wanted, mixF: airF }))
    .output(mixPlan),
  /** Issues resin, hardener and thinner, stores the batch and starts its clock. */
  mix: command()
    .input(
      commandInput({
        finishSystemId: id,
        /** As it is written on the cup and coded in bars; empty: named by day and count. */
        name: line(20).regex(/^[ -~]*$/, 'Use plain letters and digits.'),
        wanted,
        mixF: airF,
        at: doneAt,
        note: text(1000),
      }),
    )
    .output(mixResult),
  discardBatch: command().input(commandInput({ id, rowVersion, reason })).output(changed),
  /** Newest first. */
  batches: query().input(nothing).output(z.array(batch).max(200)),

  /** What stands against a session as it is put together. */
  lookAtSession: query().input(z.strictObject(sessionFields)).output(sessionLook),
  /** One gun-fill, several bows, one entry. */
  spray: command()
    .input(
      commandInput({
        ...sessionFields,
        note: text(1000),
        /** Used straight from the can, in the unit of the stores; null where nothing is issued. */
        used: between(0.01, 20_000, 'Give what was used, or leave it empty.').nullable(),
        override: override.optional(),
      }),
    )
    .output(sprayed),
  strikeOutCoat: command().input(commandInput({ id, rowVersion, reason })).output(changed),
  readSurface: command()
    .input(
      commandInput({
        orderIds: z.array(id).min(1, 'Choose at least one bow.').max(40),
        surfaceF,
        at: doneAt,
      }),
    )
    .output(z.object({ recorded: z.array(changed).max(40) })),

  recordSanding: command()
    .input(
      commandInput({
        orderId: id,
        parts: z
          .array(z.strictObject({ section: bowSection, substrate }))
          .min(1, 'Choose what was sanded.')
          .max(bowSections.length * 3),
        grit,
        strokes: z.int().min(1, 'Give one stroke or more.').max(10_000).nullable(),
        wiped: z.boolean(),
        isLast: z.boolean(),
        note: text(1000),
        at: doneAt,
      }),
    )
    .output(z.object({ recorded: z.array(changed).max(20), advice: sentences })),
  strikeOutSanding: command().input(commandInput({ id, rowVersion, reason })).output(changed),

  room: query().input(nothing).output(room),
};
