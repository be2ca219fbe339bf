import { refuseField } from '../../shared/errors.ts';
import { densityOf, type MixPart, type MixRecipe, mixParts, recipeParts } from './mix-recipe.ts';
import { refuseBelowZero, refuseUnlessAboveZero } from './refuse.ts';

/** The ready mix that is wanted, thinner included. */
export type Wanted = { readyMl: number } | { readyG: number };

export interface MixLine {
  part: MixPart;
  /** Millilitres; null where the recipe goes by weight and a density is missing. */
  volumeMl: number | null;
  /** Grams; null where the recipe goes by volume and a density is missing. */
  massG: number | null;
  /** What the scale reads with the cup tared once, this part poured: grams, or null as above. */
  scaleReadsG: number | null;
}

export interface Mix {
  /** What is poured, in order; a part that the recipe has none of is left out. */
  lines: MixLine[];
  readyMl: number | null;
  readyG: number | null;
}

/** Sum where every number is known, else null. */
function total(values: readonly (number | null)[]): number | null {
  return values.reduce<number | null>(
    (sum, value) => (sum === null || value === null ? null : sum + value),
    0,
  );
}

function known(recipe: MixRecipe, part: MixPart): number | null {
  return recipe.density[part] === null ? null : densityOf(recipe, part);
}

/** The amount of one recipe part, in millilitres or grams as the recipe goes. */
function onePart(recipe: MixRecipe, wanted: Wanted): number {
  const parts = recipeParts(recipe);
  const ready = 'readyMl' in wanted ? wanted.readyMl : wanted.readyG;
  refuseUnlessAboveZero('ready', ready, 'The ready mix');
  const wantedBy = 'readyMl' in wanted ? 'volume' : 'weight';
  const partsOfWanted = mixParts.reduce((sum, part) => {
    if (parts[part] === 0 || wantedBy === recipe.by) return sum + parts[part];
    const density = densityOf(recipe, part);
    return sum + (wantedBy === 'weight' ? parts[part] * density : parts[part] / density);
  }, 0);
  return ready / partsOfWanted;
}

/**
 * What to pour for a wanted amount of ready mix, by volume and by weight side by side. Volumes
 * are taken to add up.
 * @throws ShopError BAD_INPUT where an amount is out of bounds, or a density is missing that the
 *   change between volume and weight needs.
 */
export function mixFor(recipe: MixRecipe, wanted: Wanted): Mix {
  const parts = recipeParts(recipe);
  const unit = onePart(recipe, wanted);
  let scaleReadsG: number | null = 0;
  const lines: MixLine[] = [];
  for (const part of mixParts) {
    if (parts[part] === 0) continue;
    const amount = parts[part] * unit;
    const density = known(recipe, part);
    const volumeMl = recipe.by === 'volume' ? amount : density && amount / density;
    const massG = recipe.by === 'weight' ? amount : density && amount * density;
    scaleReadsG = total([scaleReadsG, massG]);
    lines.push({ part, volumeMl, massG, scaleReadsG });
  }
  return {
    lines,
    readyMl: total(lines.map((line) => line.volumeMl)),
    readyG: total(lines.map((line) => line.massG)),
  };
}

/** What was poured, in millilitres or in grams. */
export interface Poured {
  by: 'volume' | 'weight';
  resin: number;
  hardener: number;
}

/**
 * How far the hardener poured lies over (above 0) or under (below 0) what the recipe asks for the
 * resin poured, percent. Weighing out a ratio that is meant by volume shows up here.
 * @throws ShopError BAD_INPUT for a one-part recipe, an amount out of bounds or a missing density.
 */
export function hardenerOffPercent(recipe: MixRecipe, poured: Poured): number {
  const parts = recipeParts(recipe);
  if (parts.hardener === 0) refuseField('hardenerParts', 'This finish has no hardener.');
  refuseUnlessAboveZero('resin', poured.resin, 'The resin poured');
  refuseBelowZero('hardener', poured.hardener, 'The hardener poured');
  const asRecipe = (part: 'resin' | 'hardener') => {
    if (poured.by === recipe.by) return poured[part];
    const density = densityOf(recipe, part);
    return recipe.by === 'volume' ? poured[part] / density : poured[part] * density;
  };
  const asked = (asRecipe('resin') * parts.hardener) / parts.resin;
  return (asRecipe('hardener') / asked - 1) * 100;
}
