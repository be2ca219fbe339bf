import type { Station } from '../../../shared/contract/geometry.ts';
import { decimal, difference, inchFraction } from '../../../shared/measure.ts';

export interface StationChange {
  widthChangeIn: number | null;
  thicknessChangeIn: number | null;
  changeText: string;
}

/** Stations an eighth apart or closer are taken for the same place on the limb (common practice). */
const samePlaceIn = 1 / 8;

function widthText(changeIn: number): string {
  if (Math.round(Math.abs(changeIn) * 64) === 0) return '';
  return `${inchFraction(Math.abs(changeIn), 64)}" ${changeIn < 0 ? 'narrower' : 'wider'}`;
}

function thicknessText(changeIn: number | null): string {
  const thou = changeIn === null ? '0' : decimal(Math.abs(changeIn) * 1000, 1);
  if (changeIn === null || thou === '0') return '';
  return `${thou} thou ${changeIn < 0 ? 'thinner' : 'thicker'}`;
}

function thicknessChange(station: Station, before: Station): number | null {
  if (station.thicknessIn === null || before.thicknessIn === null) return null;
  return difference(station.thicknessIn, before.thicknessIn);
}

/** Finish counts into a thickness measured over it, so only like is compared with like in words. */
function surfaceText(station: Station, before: Station): string {
  if (station.surface === before.surface) return '';
  return station.surface === 'bare'
    ? 'bare now, over finish before'
    : 'over finish now, bare before';
}

/** What changed at one station since an older version of the same limbs. */
export function stationChange(station: Station, older: readonly Station[]): StationChange {
  const before = older
    .filter((one) => one.limb === station.limb)
    .map((one) => ({ one, away: Math.abs(one.fromFadeIn - station.fromFadeIn) }))
    .filter(({ away }) => away <= samePlaceIn)
    .toSorted((a, b) => a.away - b.away)[0]?.one;
  if (before === undefined) return { widthChangeIn: null, thicknessChangeIn: null, changeText: '' };
  const widthChangeIn = difference(station.widthIn, before.widthIn);
  const thicknessChangeIn = thicknessChange(station, before);
  const words = [
    widthText(widthChangeIn),
    thicknessText(thicknessChangeIn),
    thicknessChangeIn === null ? '' : surfaceText(station, before),
  ].filter((part) => part !== '');
  return { widthChangeIn, thicknessChangeIn, changeText: words.join(', ') || 'as before' };
}
