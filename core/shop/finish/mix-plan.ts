import type { Kysely } from 'kysely';
import type { LotPick, MixLine, MixPlan } from '../../../shared/contract/finish.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { MixPart } from '../../../shared/finish.ts';
import { toCountedUnit } from '../../../shared/stores.ts';
import { mixFor, type MixLine as PouredLine } from '../../finish/mix.ts';
import { potLifeMinutes } from '../../finish/pot-life.ts';
import { type OnePartSheet, potLifeOf, type TwoPartSheet } from '../../finish/sheet.ts';
import type { ConsumableRow, Tables } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { notFound } from '../record.ts';
import { reckonIssue } from '../stores/issue-stock.ts';
import { stockedLots } from '../stores/stocked-lot.ts';
import { mixAmount } from './mix-amount.ts';
import { finishPolicy } from './policy.ts';
import { type NamedSystem, readSystem, sheetOf } from './system-row.ts';

type Db = Kysely<Tables>;
export type MixInput = Omit<ContractInputs['finish']['planMix'], 'finishSystemId'>;

/** One part to be issued, in the unit its consumable is counted in. */
export interface PartIssue {
  part: MixPart;
  consumable: ConsumableRow;
  quantity: number;
}

/** A plan with what the command needs beyond what the screen shows. */
export interface ReckonedMix {
  plan: MixPlan;
  issues: PartIssue[];
}

const consumableIdOf = (system: NamedSystem, part: MixPart) => system[`${part}_id`];

/** A scale of this trade shows a tenth of a gram; a hundredth is finer than anybody pours. */
const hundredths = (amount: number) => Math.max(0.01, Number(amount.toFixed(2)));

async function readConsumable(db: Db, id: string): Promise<ConsumableRow> {
  const row = await db.selectFrom('consumable').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('consumable', id);
  return row;
}

/** In the counted unit; null where volume and weight need a density that the sheet does not give. */
function countedQuantity(line: PouredLine, { unit }: ConsumableRow): number | null {
  const amount = unit === 'g' ? line.massG : line.volumeMl;
  if (amount === null) return null;
  return hundredths(unit === 'g' ? amount : toCountedUnit(amount, 'mL', unit));
}

async function issueOf(db: Db, system: NamedSystem, line: PouredLine, today: string) {
  const id = consumableIdOf(system, line.part);
  const none = { issue: null, picks: [] as LotPick[] };
  if (id === null) {
    const trouble = `Name the ${line.part} of ${system.name} in the stores: its lot and date are looked at when it is issued.`;
    return { ...none, trouble: line.part === 'thinner' ? null : trouble };
  }
  const consumable = await readConsumable(db, id);
  const quantity = countedQuantity(line, consumable);
  if (quantity === null) {
    const trouble = `Enter the density of the ${line.part} on the sheet: ${consumable.name} is counted in ${consumable.unit}.`;
    return { ...none, trouble };
  }
  const lots = await stockedLots(db, { consumableId: consumable.id });
  const { picks, sentence } = reckonIssue(consumable, lots, quantity, today);
  return {
    issue: { part: line.part, consumable, quantity },
    trouble: sentence,
    picks: picks.map((pick) => ({
      part: line.part,
      consumableId: consumable.id,
      lotId: pick.lotId,
      lotNumber: pick.lotName,
      expiresOn: pick.lastDay,
      quantity: pick.quantity,
      unit: consumable.unit,
    })),
  };
}

/** Tells what a reckoning refuses as a sentence; anything else is a fault of the program. */
function sentenceOf(error: unknown): string {
  if (error instanceof ShopError && error.code === 'BAD_INPUT') return error.message;
  throw error;
}

function minutesOf(sheet: TwoPartSheet | OnePartSheet, mixF: number) {
  const none = { usableFromMin: null, usableUntilMin: null };
  if (sheet.kind === 'one-part') return { ...none, troubles: [] };
  try {
    const until = potLifeMinutes(potLifeOf(sheet), mixF);
    const from = sheet.potLife.inductionMin;
    const troubles =
      from >= until ? ['The pot life ends before the induction time. Mix cooler.'] : [];
    return { usableFromMin: from, usableUntilMin: until, troubles };
  } catch (error) {
    return { ...none, troubles: [sentenceOf(error)] };
  }
}

const lineOf = (system: NamedSystem, line: PouredLine): MixLine => ({
  part: line.part,
  name: system[`${line.part}_name`] ?? '',
  ml: line.volumeMl,
  g: line.massG,
  scaleReadsG: line.scaleReadsG,
});

function emptyPlan(transferPercent: number, troubles: string[]): MixPlan {
  return {
    lines: [],
    readyMl: null,
    readyG: null,
    areas: [],
    areaIn2: null,
    wetMil: null,
    transferPercent,
    picks: [],
    usableFromMin: null,
    usableUntilMin: null,
    troubles,
  };
}

async function reckonParts(
  db: Db,
  system: NamedSystem,
  sheet: TwoPartSheet | OnePartSheet,
  input: MixInput,
  plan: MixPlan,
  today: string,
): Promise<ReckonedMix> {
  const amount = await mixAmount(db, sheet, input.wanted, plan.transferPercent);
  const mix = mixFor(sheet.mix, amount.wanted);
  const parts = [];
  for (const line of mix.lines) parts.push(await issueOf(db, system, line, today));
  const { troubles: late, ...minutes } = minutesOf(sheet, input.mixF);
  const inactive = system.active === 1 ? [] : [`${system.name} is out of use.`];
  return {
    plan: {
      ...plan,
      ...minutes,
      lines: mix.lines.map((line) => lineOf(system, line)),
      readyMl: mix.readyMl,
      readyG: mix.readyG,
      areas: amount.areas,
      areaIn2: amount.areaIn2,
      wetMil: amount.wetMil,
      picks: parts.flatMap((part) => part.picks),
      troubles: [
        ...inactive,
        ...late,
        ...parts.flatMap((part) => (part.trouble === null ? [] : [part.trouble])),
      ],
    },
    issues: parts.flatMap((part) => (part.issue === null ? [] : [part.issue])),
  };
}

/**
 * What to pour, what is issued for it lot by lot, and how long it may be used. What cannot be
 * reckoned is told as a trouble, so that the screen can show the rest.
 * @param now ISO-8601 UTC; expiry is looked at on the shop's day.
 * @throws ShopError NOT_FOUND for an unknown order.
 */
export async function reckonMix(
  db: Db,
  system: NamedSystem,
  input: MixInput,
  now: string,
): Promise<ReckonedMix> {
  const sheet = sheetOf(system);
  const { transferPercent } = await finishPolicy(db);
  const empty = (troubles: string[]) => ({
    plan: emptyPlan(transferPercent, troubles),
    issues: [],
  });
  if (sheet.kind === 'aerosol' || sheet.kind === 'hand-rubbed-oil') {
    return empty([`Nothing is mixed of ${system.name}: it is used as it comes.`]);
  }
  try {
    return await reckonParts(db, system, sheet, input, empty([]).plan, dayOf(now));
  } catch (error) {
    return empty([sentenceOf(error)]);
  }
}

/** @see contract.finish.planMix */
export async function planMix(
  shop: { read: Db; now(): string },
  input: ContractInputs['finish']['planMix'],
): Promise<MixPlan> {
  const system = await readSystem(shop.read, input.finishSystemId);
  return (await reckonMix(shop.read, system, input, shop.now())).plan;
}
