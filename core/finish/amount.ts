import { refuseField } from '../../shared/errors.ts';
import { refuseOddTransfer } from './film.ts';
import { refuseBelowZero, refuseUnlessAboveZero } from './refuse.ts';

/** Millilitres in one cubic inch, exact: 2.54 cubed. */
export const millilitresPerCubicInch = 2.54 ** 3;

/** Millilitres in one US fluid ounce, exact: a gallon of 231 cubic inches holds 128 of them. */
export const millilitresPerFluidOunce = (231 / 128) * millilitresPerCubicInch;

/**
 * Part of a sprayed finish that reaches slender work, percent, until a shop sets its own: 25, as
 * counted for air spray of open furniture (Wisconsin Administrative Code NR 440.48, Table 1).
 *
 * Measured for the South Coast Air Quality Management District: 60 to 70 on large surfaces but 20
 * to 50 on small ones (told by R. Joseph, April 2009). The 65 that rules on spray guns ask for is
 * measured on panels: taken for a limb it mixes less than half of what is needed.
 */
export const usualTransferPercent = 25;

export interface Coating {
  /** Area of everything coated in one session, square inches. */
  areaIn2: number;
  /** Wet film of one coat, mil. */
  wetMil: number;
  coats: number;
  /** What reaches the work, percent; {@link usualTransferPercent} where nothing is known. */
  transferPercent: number;
  /** Left in gun, hose and cup, millilitres. */
  leftInGunMl: number;
}

/**
 * Ready finish to mix, millilitres: area x wet film x coats / transfer, plus what stays in the gun.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function readyAmountMl(coating: Coating): number {
  const { areaIn2, wetMil, coats, transferPercent, leftInGunMl } = coating;
  refuseUnlessAboveZero('areaIn2', areaIn2, 'The area');
  refuseUnlessAboveZero('wetMil', wetMil, 'The wet film');
  if (!Number.isInteger(coats) || coats < 1) refuseField('coats', 'Give one coat or more.');
  refuseOddTransfer(transferPercent);
  refuseBelowZero('leftInGunMl', leftInGunMl, 'What stays in the gun');
  const onWorkMl = areaIn2 * (wetMil / 1000) * coats * millilitresPerCubicInch;
  return onWorkMl / (transferPercent / 100) + leftInGunMl;
}

/** US fluid ounces from millilitres. The imperial ounce is another one: 28.41 mL. */
export function fluidOunces(millilitres: number): number {
  return millilitres / millilitresPerFluidOunce;
}
