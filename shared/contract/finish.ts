import { between, changed, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import {
  bowSection,
  bowSections,
  coatPurpose,
  cureStep,
  finishKind,
  mixPart,
  recoatState,
  substrate,
} from '../finish.ts';
import { finishSheet } from '../finish-sheet.ts';
import { missingItem, override } from '../gates.ts';
import { grit, sizedGrit } from '../grit.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, officeRoles, ownerOnly, query } from './base.ts';

const sentence = line(500);
const sentences = z.array(sentence).max(60);
const number = z.number();

const airF = between(-40, 122, 'Air is between -40 and 122 F.');
const surfaceF = between(-40, 200, 'A surface is between -40 and 200 F.');
const humidityPercent = between(0.1, 100, 'Humidity is above 0 and at most 100 percent.');
const wetMil = between(0.05, 40, 'A wet film is between 0.05 and 40 mil.');
const coatCount = z.int().min(1, 'Give one coat or more.').max(20);
/** When it was done; null for now. Never later than now. */
const doneAt = instant.nullable();

// Systems.

const systemFields = {
  sheet: finishSheet,
  /** What it is issued from in the stores; null where it is not kept there. */
  resinId: id.nullable(),
  hardenerId: id.nullable(),
  thinnerId: id.nullable(),
  active: z.boolean(),
};

export const finishSystem = z.object({
  id,
  rowVersion,
  name: line(120),
  kind: finishKind,
  ...systemFields,
  /** Names in the stores, or empty. */
  resinName: line(200),
  hardenerName: line(200),
  thinnerName: line(200),
  /** Of its hazards, at the point of use. */
  cautions: sentences,
});
export type FinishSystem = z.infer<typeof finishSystem>;

// Air.

export const airReading = z.object({
  id,
  rowVersion,
  at: instant,
  airF: number,
  humidityPercent: number,
  surfaceF: number.nullable(),
  dewPointF: number,
  note: text(1000),
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type AirReading = z.infer<typeof airReading>;

const airLook = z.object({
  dewPointF: number,
  /** Surface above dew point, Fahrenheit degrees as a difference; without one that of the air. */
  marginF: number.nullable(),
  leastMarginF: number,
  /** Limits of the sheet; null where no system is chosen. */
  limits: z
    .object({
      airF: z.object({ from: number, to: number }),
      humidityPercent: z.object({ from: number, to: number }),
    })
    .nullable(),
  /** What is wrong for a coat, one sentence each; empty where a coat may go on. */
  troubles: sentences,
});
export type AirLook = z.infer<typeof airLook>;

// Mixing.

const wanted = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('volume'), ml: between(1, 20_000, 'Between 1 and 20,000 mL.') }),
  z.strictObject({ by: z.literal('weight'), g: between(1, 20_000, 'Between 1 and 20,000 g.') }),
  z.strictObject({
    by: z.literal('bows'),
    /** Area from each bow's latest measured limbs, or as typed where they are not measured. */
    orderIds: z.array(id).max(40),
    /** Area of anything else, square inches. */
    moreAreaIn2: between(0, 20_000, 'Between 0 and 20,000 square inches.'),
    coats: coatCount,
    /** null: the middle of the sheet's range. */
    wetMil: wetMil.nullable(),
    leftInGunMl: between(0, 1000, 'Between 0 and 1000 mL.'),
  }),
]);
export type MixWanted = z.infer<typeof wanted>;

const mixLine = z.object({
  part: mixPart,
  /** Of the thing in the stores; empty where none is named on the system. */
  name: line(200),
  ml: number.nullable(),
  g: number.nullable(),
  /** The scale with the cup tared once, after this part; grams. */
  scaleReadsG: number.nullable(),
});
export type MixLine = z.infer<typeof mixLine>;

const lotPick = z.object({
  part: mixPart,
  consumableId: id,
  lotId: id,
  lotNumber: line(120),
  expiresOn: line(10).nullable(),
  quantity: number,
  unit: line(20),
});
export type LotPick = z.infer<typeof lotPick>;

const bowArea = z.object({
  orderId: id,
  number: line(40),
  /** Square inches; null where the limbs were not measured. */
  areaIn2: number.nullable(),
  /** How it was reckoned, or what is missing. */
  sentence,
});

const mixPlan = z.object({
  lines: z.array(mixLine).max(3),
  readyMl: number.nullable(),
  readyG: number.nullable(),
  /** Where it was reckoned from bows. */
  areas: z.array(bowArea).max(40),
  areaIn2: number.nullable(),
  wetMil: number.nullable(),
  transferPercent: number,
  picks: z.array(lotPick).max(200),
  /** Minutes after mixing; null for what has no pot life. */
  usableFromMin: number.nullable(),
  usableUntilMin: number.nullable(),
  /** Why it cannot be mixed; empty where it can. */
  troubles: sentences,
});
export type MixPlan = z.infer<typeof mixPlan>;

const poured = between(0, 20_000, 'Between 0 and 20,000.').nullable();

export const batch = z.object({
  id,
  rowVersion,
  name: line(120),
  finishSystemId: id,
  systemName: line(120),
  mixedAt: instant,
  mixF: number,
  resinG: poured,
  hardenerG: poured,
  thinnerG: poured,
  resinMl: poured,
  hardenerMl: poured,
  thinnerMl: poured,
  usableFrom: instant,
  usableUntil: instant,
  discardedAt: instant.nullable(),
  discardedWhy: line(400),
  note: text(1000),
  personName: line(120),
  state: z.enum(['standing', 'usable', 'past', 'discarded']),
  lots: z.array(lotPick).max(200),
  cautions: sentences,
});
export type Batch = z.infer<typeof batch>;

const mixResult = z.discriminatedUnion('outcome', [
  z.object({
    outcome: z.literal('mixed'),
    ...changed.shape,
    name: line(120),
    usableFrom: instant,
    usableUntil: instant,
    picks: z.array(lotPick).max(200),
  }),
  z.object({ outcome: z.literal('refused'), troubles: sentences }),
]);

// Coats.

const sessionFields = {
  finishSystemId: id,
  /** The batch, for a two-part finish. */
  batchId: id.nullable(),
  /** The lot used straight from the can, for what has no batch. */
  lotId: id.nullable(),
  /** null: the latest reading that stands. */
  airReadingId: id.nullable(),
  purpose: coatPurpose,
  /** Parts of the bows that were coated; empty: the whole bow. */
  sections: z.array(bowSection).max(bowSections.length),
  /** How many coats this entry stands for. */
  coats: coatCount,
  /** null: as last time, else the middle of the sheet's range. */
  wetMil: wetMil.nullable(),
  bows: z
    .array(
      z.strictObject({
        orderId: id,
        /** The film was scuffed before this coat, and with what; null where it was not. */
        scuffed: z.strictObject({ grit: grit.nullable() }).nullable(),
        /** null: measured with the air, or the room's once the bow has hung two hours. */
        surfaceF: surfaceF.nullable(),
        /** Hanging in the finish room since then; null: since its last coat. */
        hungSince: instant.nullable(),
      }),
    )
    .min(1, 'Choose at least one bow.')
    .max(40),
  at: doneAt,
};

const orderMissing = z.object({
  orderId: id,
  number: line(40),
  missing: z.array(missingItem).max(100),
});
export type OrderMissing = z.infer<typeof orderMissing>;

const sessionLook = z.object({
  /** Of the batch, lots, air and rack: what stands against the whole session. */
  session: z.array(missingItem).max(40),
  orders: z.array(orderMissing).max(40),
  /** Film that each coat leaves, mil; null where it cannot be gauged. */
  wetMil: number.nullable(),
  dryMil: number.nullable(),
  slots: z.object({ used: z.int(), wanted: z.int(), all: z.int() }),
});
export type SessionLook = z.infer<typeof sessionLook>;

const sprayed = z.discriminatedUnion('outcome', [
  z.object({
    outcome: z.literal('recorded'),
    ...changed.shape,
    coatIds: z.array(id).max(40),
    /** What the owner let pass, in words. */
    warnings: sentences,
  }),
  z.object({
    outcome: z.literal('refused'),
    session: z.array(missingItem).max(40),
    orders: z.array(orderMissing).max(40),
  }),
]);

export const coat = z.object({
  id,
  rowVersion,
  sessionId: id,
  purpose: coatPurpose,
  sections: z.array(bowSection).max(bowSections.length),
  coats: z.int(),
  wetMil: number.nullable(),
  dryMil: number.nullable(),
  scuffed: z.object({ grit: grit.nullable() }).nullable(),
  at: instant,
  systemName: line(120),
  batchId: id.nullable(),
  batchName: line(120),
  /** Let pass by the owner, and why; null where nothing stood against it. */
  overrideReason: line(400).nullable(),
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Coat = z.infer<typeof coat>;

export const sanding = z.object({
  id,
  rowVersion,
  section: bowSection,
  substrate,
  grit: sizedGrit,
  strokes: z.int().nullable(),
  wiped: z.boolean(),
  isLast: z.boolean(),
  note: text(1000),
  at: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Sanding = z.infer<typeof sanding>;

const cureTime = z.object({ step: cureStep, at: instant });

/** The recoat window of a bow at this moment. */
export const recoatWindow = z.object({
  state: recoatState,
  sentence,
  heldF: number.nullable(),
  opensAt: instant.nullable(),
  closesAt: instant.nullable(),
  doubts: sentences,
});
export type RecoatWindow = z.infer<typeof recoatWindow>;

const chosenFinish = z.object({
  id,
  rowVersion,
  finishSystemId: id,
  chosenAt: instant,
  personName: line(120),
  /** As it was when it was chosen. */
  sheet: finishSheet,
  /** The system has another sheet by now. */
  sheetChanged: z.boolean(),
  cautions: sentences,
});

const lastGrit = z.object({
  section: bowSection,
  substrate,
  grit: sizedGrit,
  /** Said to be the last one before finish. */
  isLast: z.boolean(),
  /** About its order of grits and its last grit; advice only. */
  advice: sentences,
});
export type LastGrit = z.infer<typeof lastGrit>;

/** What the records say of an order's finish. */
export const orderFinish = z.object({
  chosen: chosenFinish.nullable(),
  sandings: z.array(sanding).max(1000),
  lastGrits: z.array(lastGrit).max(20),
  /** Newest first, the struck-out ones too. */
  coats: z.array(coat).max(500),
  coatsOn: z.int(),
  lastCoatAt: instant.nullable(),
  surfaces: z
    .array(z.object({ id, at: instant, surfaceF: number, personName: line(120) }))
    .max(500),
  /** In the order they pass; none before the first coat. */
  cure: z.array(cureTime).max(4),
  /** Two-sided film adds its little stiffness; null where no film can be gauged. */
  film: z
    .object({
      /** Dry film on each face, mil. */
      dryMil: number,
      /** More draw weight by this many percent of it. */
      percent: number,
      sentence,
    })
    .nullable(),
});
export type OrderFinish = z.infer<typeof orderFinish>;

const orderFinishNow = z.object({
  orderId: id,
  ...orderFinish.shape,
  /** Coated before and the sheet says when it may be coated again; null before the first coat. */
  window: recoatWindow.nullable(),
  /** What entering Finish, a coat and the final check still need of the finish. */
  missing: z.array(missingItem).max(100),
  /** Times that have passed. */
  passed: z.array(cureStep).max(4),
  /** The computer's clock stands before the last record; null where it does not. */
  clockTrouble: sentence.nullable(),
});
export type OrderFinishNow = z.infer<typeof orderFinishNow>;

// The room.

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
