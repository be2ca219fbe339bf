import { type Grit, gritText, gritWithSize } from '../../shared/grit.ts';
import { decimal } from '../../shared/measure.ts';
import { type Abrasive, abrasive } from './grit.ts';

/** What is sanded: glass facing, bare wood, or an overlay of horn, wood or composite. */
export type Substrate = 'glass' | 'wood' | 'overlay';

/**
 * Largest step from one grit to the next, as coarser over finer size. Our own choice, as advice:
 * trade pages allow one grit to be skipped between 50 and 120 (the largest such step is CAMI 60 to
 * 100, 1.89), two skipped there are over 2, and no standard has a rule.
 */
export const largestStep = 1.9;

/**
 * Sizes within this part of each other count as one: rows that the prints set equal lie up to that
 * far apart (CAMI 500 and P1000), and no two neighbours of one scale lie as near.
 */
const sameSize = 0.1;

export interface SandingAdvice {
  /** Coarsest first. */
  sequence: readonly Grit[];
  /** The last grit before finish lies between these two, both included. */
  last: { coarsest: Grit; finest: Grit };
  source: string;
}

const p = (grit: number): Grit => ({ grit, scale: 'P' });

/** Where to start from; a shop and a finish's sheet may say otherwise. */
export const sandingAdvice: Readonly<Record<Substrate, SandingAdvice>> = {
  glass: {
    sequence: [p(180), p(240), p(320)],
    last: { coarsest: p(280), finest: p(400) },
    source:
      'Published for fibre-glass before a top coat: start at 180 to 200, finish at 320, dry; the ' +
      'width around 320 is common practice.',
  },
  wood: {
    sequence: [p(120), p(180), p(220)],
    last: { coarsest: p(180), finest: p(220) },
    source:
      'Published by the woodworking trade: 180 or 220 before finish, finer burnishes; one dissent ' +
      'holds 150 enough.',
  },
  overlay: {
    sequence: [p(150), p(220), p(320)],
    last: { coarsest: p(220), finest: p(400) },
    source: 'Common practice.',
  },
};

function coarserBy(a: Abrasive, b: Abrasive): number {
  return a.micrometres / b.micrometres;
}

function stepTrouble(before: Abrasive, next: Abrasive): string[] {
  const step = coarserBy(before, next);
  if (step < 1 / (1 + sameSize)) {
    return [`${gritWithSize(next)} is coarser than ${gritWithSize(before)} before it.`];
  }
  if (step <= 1 + sameSize) {
    return [`${gritWithSize(next)} is about as coarse as ${gritWithSize(before)} before it.`];
  }
  if (step > largestStep) {
    return [
      `From ${gritWithSize(before)} to ${gritWithSize(next)} is a large step, ` +
        `${decimal(step, 2)} to 1: put a grit between.`,
    ];
  }
  return [];
}

/**
 * What is odd about an order of grits, one sentence each; empty where nothing is. Sizes decide,
 * in micrometres: P600 is coarser than CAMI 400.
 */
export function sequenceTroubles(sequence: readonly Abrasive[]): string[] {
  return sequence.flatMap((next, index) => {
    const before = sequence[index - 1];
    return before === undefined ? [] : stepTrouble(before, next);
  });
}

/** Whether the last grit before finish suits the substrate: one sentence, or empty where it does. */
export function lastGritTroubles(substrate: Substrate, last: Abrasive): string[] {
  const { coarsest, finest } = sandingAdvice[substrate].last;
  const what = substrate === 'overlay' ? 'an overlay' : substrate;
  const range = `${gritText(coarsest)} to ${gritText(finest)}`;
  if (coarserBy(last, abrasive(coarsest)) > 1 + sameSize) {
    return [`${gritWithSize(last)} is coarse for ${what} before finish: end with ${range}.`];
  }
  if (coarserBy(abrasive(finest), last) > 1 + sameSize) {
    return [`${gritWithSize(last)} is fine for ${what} before finish: end with ${range}.`];
  }
  return [];
}
