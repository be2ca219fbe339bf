import { refuseField } from './errors.ts';
import { decimal } from './measure.ts';
import { z } from './zod.ts';

export const categories = [
  'abrasive',
  'finish',
  'hardener',
  'thinner',
  'solvent',
  'ink',
  'string',
  'overlay',
  'other',
] as const;
export const category = z.enum(categories);
export type Category = (typeof categories)[number];

export const categoryLabels: Readonly<Record<Category, string>> = {
  abrasive: 'Abrasives',
  finish: 'Finish and resin',
  hardener: 'Hardener',
  thinner: 'Thinner',
  solvent: 'Solvents',
  ink: 'Ink and lettering',
  string: 'Strings and servings',
  overlay: 'Overlays',
  other: 'Other',
};

/** What a consumable is counted in. */
export const stockUnits = ['sheet', 'disc', 'mL', 'fl oz', 'g', 'each'] as const;
export const stockUnit = z.enum(stockUnits);
export type StockUnit = (typeof stockUnits)[number];

export const unitLabels: Readonly<Record<StockUnit, string>> = {
  sheet: 'sheets',
  disc: 'discs',
  mL: 'mL',
  'fl oz': 'US fl oz',
  g: 'g',
  each: 'pieces',
};

/** Counted in whole pieces; the others are measured. */
const pieces: readonly StockUnit[] = ['sheet', 'disc', 'each'];

export function isWhole(unit: StockUnit): boolean {
  return pieces.includes(unit);
}

/**
 * Millilitres of one US fluid ounce, exactly: a US gallon is 231 cubic inches and has 128 of them,
 * an inch is 25.4 mm. The imperial ounce (28.41 mL) is another measure.
 */
export const mlPerUsFlOz = 29.5735295625;

/** Amounts without binary dust: six decimals are finer than any scale here. */
const clean = (amount: number) => Number(amount.toFixed(6)) + 0;

/** Units an amount may be given in, that of the consumable first. */
export function unitsFor(counted: StockUnit): readonly StockUnit[] {
  if (counted === 'mL') return ['mL', 'fl oz'];
  if (counted === 'fl oz') return ['fl oz', 'mL'];
  return [counted];
}

/**
 * An amount in the unit its consumable is counted in; US fluid ounces and millilitres turn into
 * each other, nothing else does.
 * @throws ShopError BAD_INPUT where the units do not go together.
 */
export function toCountedUnit(quantity: number, from: StockUnit, counted: StockUnit): number {
  if (from === counted) return clean(quantity);
  if (from === 'fl oz' && counted === 'mL') return clean(quantity * mlPerUsFlOz);
  if (from === 'mL' && counted === 'fl oz') return clean(quantity / mlPerUsFlOz);
  return refuseField('unit', `This is counted in ${unitLabels[counted]}. Give the amount in it.`);
}

const one: Readonly<Record<StockUnit, string>> = {
  sheet: 'sheet',
  disc: 'disc',
  mL: 'mL',
  'fl oz': 'fl oz',
  g: 'g',
  each: 'piece',
};

/** `3 sheets`, `1 piece`, `473.2 mL`. */
export function quantityText(quantity: number, unit: StockUnit): string {
  const digits = unit === 'fl oz' ? 2 : 1;
  const plural = isWhole(unit) && Math.abs(quantity) !== 1;
  return `${decimal(quantity, digits)} ${plural ? unitLabels[unit] : one[unit]}`;
}

export const moveKinds = [
  'received',
  'issued',
  'counted',
  'discarded',
  'returned',
  'undone',
] as const;
export const moveKind = z.enum(moveKinds);
export type MoveKind = (typeof moveKinds)[number];

export const moveLabels: Readonly<Record<MoveKind, string>> = {
  received: 'Received',
  issued: 'Issued',
  counted: 'Counted',
  discarded: 'Discarded',
  returned: 'Booked back',
  undone: 'Taken back',
};

/** Chances of running out before a delivery that there is a safety factor for, percent. */
export const runOutPercents = [10, 5, 3, 1] as const;
export const runOutPercent = z.literal(runOutPercents);

/** What a consumable needs somebody for, worst first. */
export const stockMarks = ['out', 'expired', 'order', 'expiring'] as const;
export const stockMark = z.enum(stockMarks);
export type StockMark = (typeof stockMarks)[number];

export const stockMarkLabels: Readonly<Record<StockMark, string>> = {
  out: 'None in date',
  expired: 'Expired lot on the shelf',
  order: 'Time to order',
  expiring: 'Expires soon',
};

/** What a lot is called: its printed number, or the day it came where none is printed. */
export function lotName(lot: { number: string; receivedOn: string }): string {
  return lot.number === '' ? `of ${lot.receivedOn}` : lot.number;
}
