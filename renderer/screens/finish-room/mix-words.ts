import type { LotPick, MixPlan } from '../../../shared/contract/finish.ts';
import { mixPartLabels } from '../../../shared/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { fullDay } from '../../parts/days.ts';

/** Millilitres in one US fluid ounce: a gallon of 231 cubic inches holds 128 of them. */
const mlPerFluidOunce = 29.5735295625;

/** `36 mL`; a tenth under 100. */
export function mlText(ml: number | null): string {
  return ml === null ? 'density missing' : `${decimal(ml, ml < 100 ? 1 : 0)} mL`;
}

export function fluidOunceText(ml: number | null): string {
  return ml === null ? '' : `${decimal(ml / mlPerFluidOunce, 2)} fl oz`;
}

export function gramText(g: number | null): string {
  return g === null ? 'density missing' : `${decimal(g, 1)} g`;
}

/** `Hardener: lot H-31, 12.5 mL, to be used by 3 Mar 2027`. */
export function pickText({ part, lotNumber, quantity, unit, expiresOn }: LotPick): string {
  const day = expiresOn === null ? 'no last day' : `to be used by ${fullDay(expiresOn)}`;
  const lot = lotNumber === '' ? 'lot without a number' : `lot ${lotNumber}`;
  return `${mixPartLabels[part]}: ${lot}, ${decimal(quantity, 2)} ${unit}, ${day}`;
}

const minutesText = (minutes: number) => {
  const whole = Math.floor(minutes);
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole} min` : `${hours} h ${whole % 60} min`;
};

/** How long it may be used at this temperature; empty for what has no pot life. */
export function lifeText({ usableFromMin, usableUntilMin }: MixPlan): string {
  if (usableUntilMin === null) return '';
  const until = `Usable until ${minutesText(usableUntilMin)} after mixing`;
  return usableFromMin === null || usableFromMin === 0
    ? `${until}.`
    : `${until}; let it stand ${minutesText(usableFromMin)} first.`;
}

/** What the amount was reckoned from; empty where it was given. */
export function reckonedText({ areaIn2, wetMil, transferPercent }: MixPlan): string {
  if (areaIn2 === null) return '';
  const film = wetMil === null ? '' : `, ${decimal(wetMil, 2)} mil wet a coat`;
  return `${decimal(areaIn2, 0)} square inches${film}, ${decimal(transferPercent)} % reaching the work.`;
}
