import { between, day, line, requiredLine } from './fields.ts';
import type { substrates } from './finish.ts';
import { grit } from './grit.ts';
import { hazard } from './hazards.ts';
import { z } from './zod.ts';

const temperatureF = between(-40, 250, 'A temperature is between -40 and 250 F.');
const percent = between(0, 100, 'A share is between 0 and 100 percent.');
const hours = between(0, 10_000, 'Give hours, 0 to 10,000.');
const minutes = between(0, 100_000, 'Give minutes, 0 to 100,000.');
const parts = between(0, 1000, 'Parts are between 0 and 1000.');
const coats = z.int('Give whole coats.').min(1, 'Give one coat or more.').max(50);
const density = between(0.3, 3, 'Grams in a millilitre, 0.3 to 3.').nullable();
const mil = between(0, 40, 'A film is between 0 and 40 mil.');

/** How a sheet says to mix. The first number of a printed ratio is the resin: 4:1, 2:1. */
export const mixRecipe = z.strictObject({
  by: z.enum(['volume', 'weight']),
  resinParts: parts,
  /** 0 for a one-part finish. */
  hardenerParts: parts,
  /** Percent of resin and hardener together, by the same measure; 0 where none is added. */
  thinnerPercent: between(0, 400, 'Thinner is between 0 and 400 percent.'),
  /** Grams in a millilitre; null where the sheet does not say. */
  density: z.strictObject({ resin: density, hardener: density, thinner: density }),
});

/** One line of a sheet's recoat table, as printed. */
export const recoatBand = z.strictObject({
  fromF: temperatureF,
  toF: temperatureF,
  spans: z
    .array(z.strictObject({ fromH: hours, toH: hours.nullable(), scuff: z.boolean() }))
    .max(6),
});

const ofAnyKind = {
  name: requiredLine(120),
  /** Revision as printed. */
  revision: line(60),
  /** Date printed on the sheet. */
  datedOn: day,
  air: z.strictObject({
    airF: z.strictObject({ from: temperatureF, to: temperatureF }),
    humidityPercent: z.strictObject({ from: percent, to: percent }),
  }),
  coats: z.strictObject({ from: coats, to: coats }),
  recoat: z.array(recoatBand).max(12),
  /** Hours after the last coat. */
  cure: z.strictObject({ handle: hours, stringAndFlex: hours, wrap: hours, full: hours }),
  lastGrit: z.strictObject({
    glass: grit.nullable(),
    wood: grit.nullable(),
    overlay: grit.nullable(),
  } satisfies Record<(typeof substrates)[number], unknown>),
  scuffGrit: grit.nullable(),
  hazards: z.array(hazard).max(10),
};

const film = z.strictObject({
  /** Solids by volume of the mixed finish before thinning. */
  solidsPercent: percent,
  /** Wet film of one coat, mil. */
  wetMil: z.strictObject({ from: mil, to: mil }),
});

/**
 * Everything a finish's data sheet gives, as the shop copied it. What the figures may be among
 * each other is said by `finish.checkSheet`. Fahrenheit, hours, minutes, mil, percent.
 */
export const finishSheet = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('two-part'),
    ...ofAnyKind,
    mix: mixRecipe,
    film,
    /** Minutes in the cup at the reference temperature; the range is that of `air`. */
    potLife: z.strictObject({ minutes, referenceF: temperatureF, inductionMin: minutes }),
  }),
  z.strictObject({ kind: z.literal('one-part'), ...ofAnyKind, mix: mixRecipe, film }),
  z.strictObject({ kind: z.literal('aerosol'), ...ofAnyKind }),
  z.strictObject({ kind: z.literal('hand-rubbed-oil'), ...ofAnyKind }),
]);
export type FinishSheetFields = z.infer<typeof finishSheet>;
