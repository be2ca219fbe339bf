import type { Grit } from '../../shared/grit.ts';
import type { Hazard } from '../../shared/hazards.ts';
import type { AirLimits } from './air.ts';
import type { CureHours } from './cure.ts';

import type { Substrate } from './grit-sequence.ts';

import type { MixRecipe } from './mix-recipe.ts';
import type { PotLife } from './pot-life.ts';
import type { RecoatBand } from './recoat-window.ts';

/** What every finish's sheet gives, as the shop copied it. */
interface SheetOfAnyKind {
  name: string;
  /** Revision as printed on the sheet. */
  revision: string;
  /** Date printed on the sheet, `YYYY-MM-DD`. */
  datedOn: string;
  /** Limits while it is put on. */
  air: AirLimits;
  /** How many coats, ends included. */
  coats: { from: number; to: number };
  recoat: readonly RecoatBand[];
  cure: CureHours;
  /** Last grit under it, where the sheet names one; else the advice for the substrate counts. */
  lastGrit: Readonly<Record<Substrate, Grit | null>>;
  /** Grit for scuffing between coats, where the sheet names one. */
  scuffGrit: Grit | null;
  hazards: readonly Hazard[];
}

/** What is laid down as a film that can be gauged. */
export interface FilmFigures {
  /** Solids by volume of the mixed finish before thinning, percent. */
  solidsPercent: number;
  /** Wet film of one coat, mil, ends included. */
  wetMil: { from: number; to: number };
}

/** Resin and hardener: the only kind with a batch and a pot life. */
export interface TwoPartSheet extends SheetOfAnyKind {
  kind: 'two-part';
  mix: MixRecipe;
  film: FilmFigures;
  /** Its temperatures are those of `air`. */
  potLife: Omit<PotLife, 'rangeF'>;
}

/** From the can, thinned or not. */
export interface OnePartSheet extends SheetOfAnyKind {
  kind: 'one-part';
  mix: MixRecipe;
  film: FilmFigures;
}

/** From a spray can: nothing is mixed, and cans do not state what their film is made of. */
export interface AerosolSheet extends SheetOfAnyKind {
  kind: 'aerosol';
}

/** Wiped on and off: no film to gauge. */
export interface HandRubbedOilSheet extends SheetOfAnyKind {
  kind: 'hand-rubbed-oil';
}

export type FinishSheet = TwoPartSheet | OnePartSheet | AerosolSheet | HandRubbedOilSheet;

export type FinishKind = FinishSheet['kind'];

/** What the pot life is reckoned from: inside the sheet's own temperatures and no others. */
export function potLifeOf(sheet: TwoPartSheet): PotLife {
  return { ...sheet.potLife, rangeF: sheet.air.airF };
}
