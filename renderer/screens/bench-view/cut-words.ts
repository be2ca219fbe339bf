import type { Limb } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { limbWord } from './remeasure-entry.ts';

/** A station of one limb with what comes off it, inches. */
export interface PlannedCut {
  fromFadeIn: number;
  widthNowIn: number;
  offLeftIn: number;
  offRightIn: number;
}

export interface LimbWork {
  limb: Limb;
  cuts: readonly PlannedCut[];
  /** Off the faces, thousandths of an inch. */
  bellyThou: number;
  backThou: number;
}

export interface LimbSaid {
  limb: Limb;
  /** Which limb and where: `Upper limb, both edges`. */
  title: string;
  /** In big type: `1/64 in per side`. */
  big: string;
  /** Beside it: `1/32 in total`; null where one edge alone is cut. */
  total: string | null;
  /** `full from 6 to 14 in from the fade`; null where it is all of the limb or nothing. */
  where: string | null;
}

const nothing = 1e-6;

/** A cut for the rule where it is whole 64ths; one that was given otherwise is said as it was given. */
export function cutText(inches: number): string {
  const whole = Math.round(inches * 64) / 64;
  return Math.abs(inches - whole) < 5e-4
    ? `${inchFraction(inches, 64)} in`
    : `${inches.toFixed(3)} in`;
}

/** Where the full cut lies: the stations within a tenth of the deepest. */
function whereFull(cuts: readonly PlannedCut[]): string | null {
  const off = ({ offLeftIn, offRightIn }: PlannedCut) => offLeftIn + offRightIn;
  const deepest = Math.max(...cuts.map(off));
  const full = cuts.filter((cut) => off(cut) > 0.9 * deepest).map(({ fromFadeIn }) => fromFadeIn);
  const touched = cuts.filter((cut) => off(cut) > nothing).map(({ fromFadeIn }) => fromFadeIn);
  const span = (places: readonly number[]) =>
    `${inchFraction(Math.min(...places))} to ${inchFraction(Math.max(...places))} in`;
  if (full.length === 0) return null;
  const blends = touched.length > full.length ? `, blended out over ${span(touched)}` : '';
  return `full from ${span(full)} from the fade${blends}`;
}

/** One limb's part of the bite in words. Every width is given both ways: per side and in total. */
export function limbSaid({ limb, cuts, bellyThou, backThou }: LimbWork): LimbSaid {
  const name = `${limbWord(limb)} limb`;
  const left = Math.max(0, ...cuts.map(({ offLeftIn }) => offLeftIn));
  const right = Math.max(0, ...cuts.map(({ offRightIn }) => offRightIn));
  const where = left + right > nothing ? whereFull(cuts) : null;
  if (left > nothing && right > nothing) {
    const even = Math.abs(left - right) < 1 / 512;
    return {
      limb,
      title: `${name}, both edges`,
      big: even ? `${cutText(left)} per side` : `${cutText(left)} left, ${cutText(right)} right`,
      total: `${cutText(left + right)} total`,
      where,
    };
  }
  if (left > nothing || right > nothing) {
    const edge = left > nothing ? 'left' : 'right';
    return {
      limb,
      title: `${name}, ${edge} edge only`,
      big: `${cutText(left + right)} on the ${edge}`,
      total: `${cutText(left + right)} total`,
      where,
    };
  }
  return facesSaid({ limb, cuts, bellyThou, backThou }, name);
}

function facesSaid({ limb, bellyThou, backThou }: LimbWork, name: string): LimbSaid {
  const thou = (value: number) => `${decimal(value, 2)} thou`;
  if (bellyThou > nothing && backThou > nothing) {
    const even = Math.abs(bellyThou - backThou) < 0.01;
    return {
      limb,
      title: `${name}, both faces`,
      big: even
        ? `${thou(bellyThou)} per face`
        : `${thou(bellyThou)} belly, ${thou(backThou)} back`,
      total: `${thou(bellyThou + backThou)} total`,
      where: 'evenly from fade to tip',
    };
  }
  const face = bellyThou > nothing ? 'belly' : 'back';
  const off = bellyThou + backThou;
  if (off > nothing) {
    return {
      limb,
      title: `${name}, ${face} only`,
      big: `${thou(off)} off the ${face}`,
      total: null,
      where: 'evenly from fade to tip',
    };
  }
  return { limb, title: name, big: 'Nothing', total: null, where: null };
}
