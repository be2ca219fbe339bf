import { refuseField } from '../../shared/errors.ts';
import { refuseBelowZero, refuseUnlessAboveZero, refuseUnlessPercent } from './refuse.ts';

/** Cubic inches in one US gallon, exact (NIST SP 811, 2008, App. B). */
export const cubicInchesPerGallon = 231;

/** Square feet that one US gallon covers 1 mil (0.001 in) thick, nothing lost: 1604.17. */
export const squareFeetPerGallonAtOneMil = cubicInchesPerGallon / 0.001 / 144;

/** Micrometres in one mil, a thousandth of an inch; exact (NIST SP 811, 2008, App. B). */
export const micrometresPerMil = 25.4;

/** Grams in one pound, exact (NIST SP 811, 2008, App. B). */
const gramsPerPound = 453.59237;

/** How much of what is sprayed stays in the film. */
export interface Solids {
  /** Solids by volume of the mixed finish before thinning, percent, above 0 and at most 100. */
  solidsPercent: number;
  /** Thinner added, percent by volume of the mixed finish before thinning; 0 where none. */
  thinnerPercent: number;
}

function solidsPart({ solidsPercent, thinnerPercent }: Solids): number {
  refuseUnlessPercent('solidsPercent', solidsPercent, 'Solids by volume');
  refuseBelowZero('thinnerPercent', thinnerPercent, 'Thinner');
  return solidsPercent / 100 / (1 + thinnerPercent / 100);
}

/**
 * Dry film left by a wet film, in the unit of the wet film (mil or micrometres).
 * DFT = WFT x VS / (1 + T), any text on coating inspection.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function dryFilm(wetFilm: number, solids: Solids): number {
  refuseUnlessAboveZero('wetFilm', wetFilm, 'The wet film');
  return wetFilm * solidsPart(solids);
}

/**
 * Wet film to lay down for a wanted dry film, in the unit of the dry film.
 * WFT = DFT x (1 + T) / VS, any text on coating inspection.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function wetFilm(dryFilm: number, solids: Solids): number {
  refuseUnlessAboveZero('dryFilm', dryFilm, 'The dry film');
  return dryFilm / solidsPart(solids);
}

/**
 * Square feet that one US gallon of ready finish covers, nothing lost: 1604.17 x VS / DFT.
 * @param dryMil dry film in mil (thousandths of an inch).
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function squareFeetPerGallon(dryMil: number, solids: Solids): number {
  return squareFeetPerGallonAtOneMil / wetFilm(dryMil, solids);
}

/**
 * Square metres that one litre of ready finish covers, nothing lost: 1000 x VS / DFT.
 * @param dryMicrometres dry film in micrometres.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function squareMetresPerLitre(dryMicrometres: number, solids: Solids): number {
  return 1000 / wetFilm(dryMicrometres, solids);
}

/** A finish laid down evenly, weighed rather than measured by volume. */
export interface LaidDown {
  /** Mass that reached the work, grams. */
  massG: number;
  /** Mass of one US gallon of it, pounds. */
  poundsPerGallon: number;
  areaFt2: number;
}

/**
 * Dry film in mil from the mass laid on an area: 1604 x lb x VS / (lb/gal x ft2).
 *
 * Source: R. Joseph, column on film thickness from mass (December 2007). His line for grams
 * multiplies by 453.6, where pounds from grams divides.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function dryFilmFromMass(laid: LaidDown, solids: Solids): number {
  refuseUnlessAboveZero('massG', laid.massG, 'The mass laid down');
  refuseUnlessAboveZero('poundsPerGallon', laid.poundsPerGallon, 'The mass of a gallon');
  refuseUnlessAboveZero('areaFt2', laid.areaFt2, 'The area');
  const gallons = laid.massG / gramsPerPound / laid.poundsPerGallon;
  return dryFilm((squareFeetPerGallonAtOneMil * gallons) / laid.areaFt2, solids);
}

/**
 * Solids left by volume in a ready mix, percent: what a wet-film gauge's reading is multiplied by.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function readySolidsPercent(solids: Solids): number {
  return solidsPart(solids) * 100;
}

/** @throws ShopError BAD_INPUT where the share is not above 0 and at most 100 percent. */
export function refuseOddTransfer(transferPercent: number): void {
  if (transferPercent > 100) {
    refuseField('transferPercent', 'No more than 100 percent of the finish can reach the work.');
  }
  refuseUnlessPercent('transferPercent', transferPercent, 'What reaches the work');
}
