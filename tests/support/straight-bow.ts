import type { WholeBow } from '../../core/limb/bow.ts';
import type { HalfBow } from '../../core/limb/curve.ts';

/**
 * The straight-end bow with stiffness falling evenly to nothing at the tip, 36 in a side on a grip
 * of 8 in: the geometry of P. E. Klopsteg's bow as B. W. Kooi's thesis of 1983 states it, scaled to
 * 50 lbf at 28 in from the throat. `factor` changes the stiffness along the limb.
 */
export function straightBow(factor: (fromFadeIn: number) => number = () => 1): WholeBow {
  const lengthIn = 32;
  const half: HalfBow = {
    fadeIn: 4,
    fadeOffsetIn: 0,
    padAngleRad: 0,
    limb: {
      lengthIn,
      breaksIn: [0, lengthIn / 3, (2 * lengthIn) / 3, lengthIn],
      eiAt: (s) => ((57_569.62 * (lengthIn - s)) / lengthIn) * factor(s),
      curvatureAt: () => 0,
    },
  };
  return { upper: half, lower: half };
}
