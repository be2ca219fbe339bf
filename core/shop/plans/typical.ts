import type { PlanBowInput, PlanStationInput } from '../../../shared/plan-input.ts';

type Kind = PlanBowInput['kind'];

interface Typical {
  fadeIn: number;
  limbIn: number;
  braceIn: number;
  glassIn: number;
  reflexIn: number;
  recurveIn: number;
  fadeWidthIn: number;
  tipWidthIn: number;
  fadeThickIn: number;
  tipThickIn: number;
}

/** Sizes of a usual bow of each kind, inches; common practice, for where nobody measured. */
export const typicalOf: Record<Kind, Typical> = {
  longbow: {
    fadeIn: 7,
    limbIn: 26,
    braceIn: 7,
    glassIn: 0.04,
    reflexIn: 0,
    recurveIn: 0,
    fadeWidthIn: 1.25,
    tipWidthIn: 0.5,
    fadeThickIn: 0.44,
    tipThickIn: 0.28,
  },
  hybrid: {
    fadeIn: 7.5,
    limbIn: 24,
    braceIn: 7.5,
    glassIn: 0.04,
    reflexIn: 1,
    recurveIn: 0,
    fadeWidthIn: 1.375,
    tipWidthIn: 0.5625,
    fadeThickIn: 0.42,
    tipThickIn: 0.28,
  },
  recurve: {
    fadeIn: 8,
    limbIn: 21.5,
    braceIn: 8,
    glassIn: 0.04,
    reflexIn: 0,
    recurveIn: 2.5,
    fadeWidthIn: 1.6875,
    tipWidthIn: 0.75,
    fadeThickIn: 0.38,
    tipThickIn: 0.26,
  },
};

/** The hook of a recurve begins about here, part of the limb. */
export const typicalHookPart = 0.64;
export const typicalEdgeRadiusIn = 1 / 16;
export const typicalOffsetIn = -0.5;

const along = (from: number, to: number, fromFadeIn: number, lengthIn: number) =>
  from + ((to - from) * Math.min(fromFadeIn, lengthIn)) / lengthIn;

export function typicalThicknessIn(kind: Kind, fromFadeIn: number, lengthIn: number): number {
  const { fadeThickIn, tipThickIn } = typicalOf[kind];
  return along(fadeThickIn, tipThickIn, fromFadeIn, lengthIn);
}

/** A straight taper from fade to tip, at every fourth inch and the tip. */
export function typicalStations(kind: Kind, lengthIn: number): PlanStationInput[] {
  const { fadeWidthIn, tipWidthIn } = typicalOf[kind];
  const places = Array.from({ length: Math.ceil(lengthIn / 4) }, (_, i) => 4 * i);
  return [...places, lengthIn].map((fromFadeIn) => {
    const widthIn = along(fadeWidthIn, tipWidthIn, fromFadeIn, lengthIn);
    return {
      fromFadeIn,
      bellyWidthIn: widthIn,
      backWidthIn: widthIn,
      thicknessIn: typicalThicknessIn(kind, fromFadeIn, lengthIn),
    };
  });
}
