import { refuseField } from '../../shared/errors.ts';
import { refuseBelowZero, refuseUnlessAboveZero } from './refuse.ts';

/** What goes into the cup, in this order. */
export type MixPart = 'resin' | 'hardener' | 'thinner';

/** How a sheet says to mix. The first number of a printed ratio is the resin: 4:1, 2:1. */
export interface MixRecipe {
  /** What the parts and the thinner's percentage are measured by. */
  by: 'volume' | 'weight';
  resinParts: number;
  /** 0 for a one-part finish. */
  hardenerParts: number;
  /** Percent of resin and hardener together, by the same measure; 0 where none is added. */
  thinnerPercent: number;
  /** Grams in a millilitre, from the sheets; null where they do not say. */
  density: Readonly<Record<MixPart, number | null>>;
}

const names: Readonly<Record<MixPart, string>> = {
  resin: 'resin',
  hardener: 'hardener',
  thinner: 'thinner',
};

export const mixParts: readonly MixPart[] = ['resin', 'hardener', 'thinner'];

/**
 * Parts of each by the recipe's own measure, thinner reckoned in; 0 for what does not belong in it.
 * @throws ShopError BAD_INPUT naming the part or the percentage that is out of bounds.
 */
export function recipeParts(recipe: MixRecipe): Record<MixPart, number> {
  const { resinParts, hardenerParts, thinnerPercent } = recipe;
  refuseUnlessAboveZero('resinParts', resinParts, 'Parts of resin');
  refuseBelowZero('hardenerParts', hardenerParts, 'Parts of hardener');
  refuseBelowZero('thinnerPercent', thinnerPercent, 'Thinner');
  return {
    resin: resinParts,
    hardener: hardenerParts,
    thinner: ((resinParts + hardenerParts) * thinnerPercent) / 100,
  };
}

/** @throws ShopError BAD_INPUT where the sheet gives no density of this part, or one not above 0. */
export function densityOf(recipe: MixRecipe, part: MixPart): number {
  const density = recipe.density[part];
  if (density === null) {
    refuseField(
      `density.${part}`,
      `Enter the density of the ${names[part]} to change between volume and weight.`,
    );
  }
  refuseUnlessAboveZero(`density.${part}`, density, `The density of the ${names[part]}`);
  return density;
}

/**
 * The same recipe by the other measure: (wA:wB) = (vA x densityA):(vB x densityB).
 * @throws ShopError BAD_INPUT where a density is missing.
 */
export function recipeBy(by: MixRecipe['by'], recipe: MixRecipe): MixRecipe {
  if (by === recipe.by) return recipe;
  const parts = recipeParts(recipe);
  const turned = (part: MixPart) => {
    if (parts[part] === 0) return 0;
    const density = densityOf(recipe, part);
    return by === 'weight' ? parts[part] * density : parts[part] / density;
  };
  const resinParts = turned('resin');
  const hardenerParts = turned('hardener');
  return {
    ...recipe,
    by,
    resinParts,
    hardenerParts,
    thinnerPercent: (turned('thinner') / (resinParts + hardenerParts)) * 100,
  };
}
