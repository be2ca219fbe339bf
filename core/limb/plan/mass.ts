import { type LimbProfile, sizesOf } from '../limb-profile.ts';

/** Pounds a cubic inch. */
export interface Densities {
  glassLbPerIn3: number;
  coreLbPerIn3: number;
}

/** Glass laminate 1.85 and core wood or bamboo 0.70 g/cm3 (values from memory, settings). */
export const defaultDensities: Densities = { glassLbPerIn3: 0.067, coreLbPerIn3: 0.0253 };

/** Slices of a limb that the sum is taken over. */
const slices = 52;

/**
 * Mass of a limb, each slice weighted by the square of its distance from the fade over the limb's
 * length, since that is about how it moves in the shot: pounds of mass as if at the nock.
 */
export function tipWeightedMassLb(profile: LimbProfile, densities: Densities): number {
  const { lengthIn, layup } = profile;
  const sizes = sizesOf(profile);
  const stepIn = lengthIn / slices;
  const glassIn = layup.bellyGlassIn + layup.backGlassIn;
  let sum = 0;
  for (let i = 0; i < slices; i += 1) {
    const part = (i + 0.5) / slices;
    const { bellyWidthIn, backWidthIn, thicknessIn } = sizes(part * lengthIn);
    const widthIn = (bellyWidthIn + backWidthIn) / 2;
    const perArea =
      glassIn * densities.glassLbPerIn3 + (thicknessIn - glassIn) * densities.coreLbPerIn3;
    sum += part ** 2 * widthIn * perArea * stepIn;
  }
  return sum;
}
