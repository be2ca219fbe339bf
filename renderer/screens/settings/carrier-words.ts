import { decimal } from '../../../shared/measure.ts';
import type { CarrierProfile, Over } from '../../../shared/parcel.ts';
import { daysUntil } from '../../parts/days.ts';
import { limitFields } from './carrier-fields.ts';

/** Carriers change their limits every year. */
const staleDays = 365;

export const isStale = (asOf: string): boolean => daysUntil(asOf) < -staleDays;

const short: Record<keyof Over, string> = {
  longestIn: 'in long',
  secondIn: 'in on the second side',
  lengthPlusGirthIn: 'in length plus girth',
  volumeIn3: 'cubic in',
  weightLb: 'lb',
};

/** `108 in long, 165 in length plus girth, 150 lb`; empty where there is no limit. */
export function limitWords(over: Over): string {
  return limitFields
    .flatMap(({ key }) => {
      const limit = over[key];
      return limit === undefined ? [] : [`${decimal(limit, 2)} ${short[key]}`];
    })
    .join(', ');
}

/** A surcharge with its limits, which are not said twice where its name says them already. */
export function surchargeWords({ name, over }: CarrierProfile['surcharges'][number]): string {
  const limits = limitWords(over);
  return limits === '' || name.includes(limits) ? name : `${name}: over ${limits}`;
}

/** How the volume is charged, in words. */
export function volumeWords({ dimensional: { divisor, overIn3 } }: CarrierProfile): string {
  const from = overIn3 === null ? '' : ` where it is over ${decimal(overIn3)} cubic in`;
  return `Volume charged by ${decimal(divisor, 1)} cubic in a pound${from}.`;
}
