import { refuseField } from '../../shared/errors.ts';
import { instantMs, minutesAfter } from './instant.ts';
import { refuseBelowZero, refuseUnlessAboveZero } from './refuse.ts';
import { refuseOddTemperature, temperatureText } from './temperature.ts';

/** Warming that halves the pot life, Fahrenheit degrees (10 C as a difference). */
export const halvingF = 18;

/** What the sheet of a two-part finish says about the time in the cup. */
export interface PotLife {
  /** Minutes in the cup at the reference temperature. */
  minutes: number;
  /** Usually 70 F. */
  referenceF: number;
  /** Temperatures the sheet allows mixing and applying at, both included, Fahrenheit. */
  rangeF: { from: number; to: number };
  /** Minutes to let the mix stand before it is used; 0 where none. */
  inductionMin: number;
}

/** @throws ShopError BAD_INPUT naming what cannot be on such a sheet. */
export function refuseOddPotLife(sheet: PotLife): void {
  refuseUnlessAboveZero('minutes', sheet.minutes, 'The pot life');
  refuseBelowZero('inductionMin', sheet.inductionMin, 'The induction time');
  refuseOddTemperature('referenceF', sheet.referenceF, 'The pot life reference');
  const { from, to } = sheet.rangeF;
  if (!(from < to)) refuseField('rangeF', 'The temperature range of the sheet must rise.');
  if (!(from <= sheet.referenceF && sheet.referenceF <= to)) {
    refuseField('referenceF', "The pot life reference must lie inside the sheet's temperatures.");
  }
}

/**
 * Minutes in the cup at another temperature: t(T) = t(ref) x 2^(-(T - ref) / 18).
 *
 * Source: UFGS 09971, 3.7.1.3 (21 C / 70 F and 50 % humidity; each 10 C up about halves it, each
 * 10 C down doubles it). It holds near one temperature and one activation energy only, so never
 * outside the sheet's range. A large cup warms itself, damp air shortens it, and added solvent or
 * fresh mix does not make it longer.
 * @param mixF the mix, Fahrenheit; the warmest it has stood at, where that changed.
 * @throws ShopError BAD_INPUT outside the sheet's temperatures, or for an odd sheet.
 */
export function potLifeMinutes(sheet: PotLife, mixF: number): number {
  refuseOddPotLife(sheet);
  refuseOddTemperature('mixF', mixF, 'The mix');
  const { from, to } = sheet.rangeF;
  if (mixF < from || mixF > to) {
    refuseField(
      'mixF',
      `The sheet says nothing about ${temperatureText(mixF)}: mix between ` +
        `${temperatureText(from)} and ${temperatureText(to)}.`,
    );
  }
  return sheet.minutes * 2 ** (-(mixF - sheet.referenceF) / halvingF);
}

export interface BatchTimes {
  /** The mix may be used from then, ISO-8601 UTC: mixing plus induction. */
  usableFrom: string;
  /** And no longer than this, ISO-8601 UTC. Pot life counts from mixing, induction included. */
  usableUntil: string;
}

/**
 * From when and until when a batch may be used.
 * @param mixedAt ISO-8601 UTC.
 * @throws ShopError BAD_INPUT as {@link potLifeMinutes}, and where induction eats the pot life.
 */
export function batchTimes(sheet: PotLife, mixedAt: string, mixF: number): BatchTimes {
  const minutes = potLifeMinutes(sheet, mixF);
  if (sheet.inductionMin >= minutes) {
    refuseField('mixF', 'The pot life ends before the induction time. Mix cooler.');
  }
  return {
    usableFrom: minutesAfter('mixedAt', mixedAt, sheet.inductionMin),
    usableUntil: minutesAfter('mixedAt', mixedAt, minutes),
  };
}

/** Where a batch stands at an instant. At the very end of its pot life it is past. */
export function batchState(times: BatchTimes, at: string): 'standing' | 'usable' | 'past' {
  const now = instantMs('at', at);
  if (now >= instantMs('usableUntil', times.usableUntil)) return 'past';
  return now < instantMs('usableFrom', times.usableFrom) ? 'standing' : 'usable';
}
