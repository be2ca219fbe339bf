import { refuseField } from '../../shared/errors.ts';
import { type Moments, plus, roundedCornerMoments, slabMoments, times } from './moments.ts';

/** One lamination or facing, as it lies from belly to back. */
export interface Layer {
  thicknessIn: number;
  modulusPsi: number;
}

/** A limb cut square to its length. Width runs straight from the belly face to the back face. */
export interface Section {
  /** From belly to back. */
  layers: readonly Layer[];
  bellyWidthIn: number;
  backWidthIn: number;
  /** Radius of all four edges, inches; 0 is square. */
  edgeRadiusIn: number;
}

export interface SectionStiffness {
  /** Bending stiffness about the section's own neutral axis, lbf in2. */
  eiLbfIn2: number;
  /** Neutral axis, inches from the belly face. */
  neutralAxisIn: number;
  thicknessIn: number;
  areaIn2: number;
}

function refuseOddSection(section: Section, thicknessIn: number): void {
  const { layers, bellyWidthIn, backWidthIn, edgeRadiusIn } = section;
  if (layers.length === 0) refuseField('layers', 'A section needs at least one layer.');
  for (const [index, layer] of layers.entries()) {
    if (!(layer.thicknessIn > 0))
      refuseField(`layers.${index}`, `Layer ${index + 1} must be thicker than 0 in.`);
    if (!(layer.modulusPsi > 0))
      refuseField(`layers.${index}`, `Layer ${index + 1} needs a modulus over 0 psi.`);
  }
  if (!(bellyWidthIn > 0) || !(backWidthIn > 0))
    refuseField('width', 'Both faces must be wider than 0 in.');
  const largest = Math.min(thicknessIn, bellyWidthIn, backWidthIn) / 2;
  if (!(edgeRadiusIn >= 0) || edgeRadiusIn > largest) {
    refuseField('edgeRadiusIn', `The edge radius must lie between 0 and ${largest.toFixed(3)} in.`);
  }
}

/** Area and first and second moments of one layer between two heights over the belly face. */
function layerMoments(section: Section, thicknessIn: number, from: number, to: number): Moments {
  const { bellyWidthIn, backWidthIn, edgeRadiusIn: radius } = section;
  const full = slabMoments(bellyWidthIn, (backWidthIn - bellyWidthIn) / thicknessIn, from, to);
  if (radius === 0) return full;
  const belly = roundedCornerMoments(radius, 0, 1, from, to);
  const back = roundedCornerMoments(radius, thicknessIn, -1, from, to);
  // Two edges on each face.
  return plus(full, times(plus(belly, back), -2));
}

/**
 * Stiffness of a layered section by the transformed-section method: each layer counts by its
 * modulus, about the neutral axis that the layers have together. Edges are rounded exactly,
 * through whatever layers the radius reaches.
 *
 * Source of the method: any text on strength of materials, e.g. S. P. Timoshenko, "Strength of
 * Materials", Part I, composite beams.
 * @throws ShopError BAD_INPUT naming what is zero, negative or larger than the section.
 */
export function sectionStiffness(section: Section): SectionStiffness {
  const thicknessIn = section.layers.reduce((sum, layer) => sum + layer.thicknessIn, 0);
  refuseOddSection(section, thicknessIn);
  let weighted: Moments = { area: 0, first: 0, second: 0 };
  let areaIn2 = 0;
  let from = 0;
  for (const layer of section.layers) {
    const moments = layerMoments(section, thicknessIn, from, from + layer.thicknessIn);
    weighted = plus(weighted, times(moments, layer.modulusPsi));
    areaIn2 += moments.area;
    from += layer.thicknessIn;
  }
  const neutralAxisIn = weighted.first / weighted.area;
  return {
    eiLbfIn2: weighted.second - weighted.area * neutralAxisIn ** 2,
    neutralAxisIn,
    thicknessIn,
    areaIn2,
  };
}
