import { type BowState, braceBow, meshesOf, type WholeBow } from './bow.ts';
import type { HalfState } from './brace-half.ts';
import type { HalfBow } from './curve.ts';
import { march } from './march.ts';
import type { Mesh } from './mesh.ts';
import { converged, type Solved } from './solved.ts';

/** How far the string stands from one place of a limb, square to the string, inches. */
export interface StringDistance {
  fromFadeIn: number;
  distanceIn: number;
}

export interface BraceTiller {
  /**
   * Upper minus lower string distance at the fades, inches. Positive: the upper limb is the weaker
   * one and stands farther from the string, as most bows for split fingers have it.
   */
  tillerIn: number;
  /** At the fade, every break of the limb and the tip, outwards. */
  upper: StringDistance[];
  lower: StringDistance[];
  tensionLbf: number;
  /** Tip to tip along the string, inches. */
  stringIn: number;
}

/** Places as far from the fade as a break are the break, give or take the sum of the steps to it. */
const sameIn = 1e-9;

function distances(bow: HalfBow, mesh: Mesh, { pull }: HalfState): StringDistance[] {
  const [sin, cos] = [Math.sin(pull.angleRad), Math.cos(pull.angleRad)];
  const found: StringDistance[] = [];
  march(bow, mesh, pull, (fromFadeIn, x, y) => {
    if (bow.limb.breaksIn.some((at) => Math.abs(at - fromFadeIn) < sameIn)) {
      found.push({ fromFadeIn, distanceIn: (pull.nockIn - y) * cos - x * sin });
    }
  });
  return found;
}

function tillerOf(
  bow: WholeBow,
  meshes: { upper: Mesh; lower: Mesh },
  state: BowState,
): BraceTiller {
  const upper = distances(bow.upper, meshes.upper, state.upper);
  const lower = distances(bow.lower, meshes.lower, state.lower);
  return {
    tillerIn: (upper[0]?.distanceIn ?? 0) - (lower[0]?.distanceIn ?? 0),
    upper,
    lower,
    tensionLbf: state.upper.pull.tensionLbf,
    stringIn: state.upper.halfStringIn + state.lower.halfStringIn,
  };
}

/**
 * Tiller of the braced bow: both limbs share one tension and one straight string. The weaker limb
 * bends more, its tip comes farther back, and so it stands farther from the string. Where the string lies on a recurve, the list ends at that place.
 *
 * Source of the measure: string to limb, square to the string, at the fades, upper minus lower
 * (common practice; J. Duff, "Bows and Arrows", ch. IV, marks 12, 15 and 18 in from the grip).
 * @param braceIn throat to string, inches
 */
export function braceTiller(bow: WholeBow, braceIn: number, segments = 60): Solved<BraceTiller> {
  const meshes = meshesOf(bow, segments);
  const braced = braceBow(bow, meshes, braceIn);
  if (braced.status !== 'converged') return braced;
  return converged(tillerOf(bow, meshes, braced.value), braced.residual, braced.iterations);
}
