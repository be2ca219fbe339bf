import type { WholeBow } from '../../core/limb/bow.ts';
import type { HalfBow } from '../../core/limb/curve.ts';

export type Profile = 'straight' | 'reflexed' | 'deflexed' | 'recurved';
export const profiles: readonly Profile[] = ['straight', 'reflexed', 'deflexed', 'recurved'];

export interface RandomBow {
  profile: Profile;
  bow: WholeBow;
  braceIn: number;
}

/** Curvature along a limb: an even set over the working part, a recurve over its outer quarter. */
function curvature(
  profile: Profile,
  lengthIn: number,
  amount: number,
): { breaksIn: number[]; at: (s: number) => number } {
  const hook = lengthIn * 0.75;
  if (profile === 'recurved') {
    const at = (s: number) => (s < hook ? 0 : (-2 * amount * (s - hook)) / (lengthIn - hook) ** 2);
    return { breaksIn: [0, hook, lengthIn], at };
  }
  const sign = { straight: 0, reflexed: -1, deflexed: 1 }[profile];
  return { breaksIn: [0, lengthIn], at: () => (sign * amount * 0.25) / lengthIn };
}

/**
 * A plausible bow of a given profile: limbs of 18 to 32 in on grips of 4 to 10 in to the fade,
 * stiffness falling to a tenth or to nothing at the tip, throat offset and pad angle, and every
 * third one with limbs of its own each.
 */
export function randomBow(random: () => number, profile: Profile): RandomBow {
  const between = (low: number, high: number) => low + (high - low) * random();
  const padAngleRad = between(-0.15, 0.08);
  const fadeOffsetIn = between(-1.5, 0.25);
  // Radian that the outer limb turns away from the archer; past about 0.9 the string lies on it.
  const amount = between(0.1, 1.5);
  const even = random() < 2 / 3;
  const limbOf = (lengthIn: number, ei: number): HalfBow => {
    const left = random() < 0.3 ? 0 : between(0.1, 0.6);
    const { breaksIn, at } = curvature(profile, lengthIn, amount);
    return {
      fadeIn,
      fadeOffsetIn,
      padAngleRad,
      limb: {
        lengthIn,
        breaksIn,
        eiAt: (s) => ei * (left + ((1 - left) * (lengthIn - s)) / lengthIn),
        curvatureAt: at,
      },
    };
  };
  const fadeIn = between(4, 10);
  const lengthIn = between(18, 32);
  const ei = between(15, 40) * lengthIn ** 2;
  const upper = limbOf(lengthIn, ei);
  const lower = even ? upper : limbOf(lengthIn + between(-1, 1), ei * between(0.9, 1.1));
  return { profile, bow: { upper, lower }, braceIn: between(6, 8.5) };
}
