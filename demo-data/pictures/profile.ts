import type { BowLook } from './look.ts';
import type { Point } from './svg.ts';

export interface Section {
  /** Inches from the middle of the bow along the limb; negative is the lower limb. */
  along: number;
  /** Middle of the limb, inches: x along the bow, y towards the back. */
  at: Point;
  /** Unit vector towards the back. */
  towardsBack: Point;
  /** Thickness of the limb, inches. */
  deep: number;
}

const degrees = Math.PI / 180;

interface Curve {
  /** Half the riser, inches. */
  riser: number;
  /** Slope at the fade, degrees; negative leans towards the archer. */
  deflex: number;
  /** Slope at the tip of the unstrung limb. */
  tip: number;
  /** Share of the limb after which it turns up. */
  turnsAt: number;
  /** Slope the string takes out of the limb at its tip. */
  braced: number;
}

const curves: Record<BowLook['kind'], Curve> = {
  longbow: { riser: 8.5, deflex: -2, tip: 5, turnsAt: 0.25, braced: -31 },
  hybrid: { riser: 8.5, deflex: -9, tip: 17, turnsAt: 0.2, braced: -34 },
  recurve: { riser: 9.5, deflex: -13, tip: 48, turnsAt: 0.55, braced: -33 },
};

function slopeAt(curve: Curve, along: number, half: number, bend: number): number {
  if (along <= curve.riser * 0.6) return 0;
  const toFade = Math.min(1, (along - curve.riser * 0.6) / (curve.riser * 0.4));
  const share = Math.max(0, (along - curve.riser) / (half - curve.riser));
  const up = Math.max(0, (share - curve.turnsAt) / (1 - curve.turnsAt));
  const bent = bend * curve.braced * Math.min(1, share * 1.25) ** 1.15;
  return curve.deflex * toFade + (curve.tip - curve.deflex) * up ** 1.7 + bent;
}

function deepAt(look: BowLook, curve: Curve, along: number, half: number): number {
  const share = Math.max(0, (along - curve.riser) / (half - curve.riser));
  const thin = look.kind === 'longbow' ? 0.36 : 0.28;
  const wedge = look.kind === 'recurve' ? Math.max(0, share - 0.82) * 0.5 : 0;
  // Half as thick again as in life: at this distance a lens would show little of half an inch.
  return 1.45 * (0.6 - (0.6 - thin) * share ** 0.7 + wedge);
}

/** The bow seen from its side, from the lower tip to the upper. Bend: 0 unstrung, 1 braced, 2 drawn. */
export function sections(look: BowLook, bend: number): Section[] {
  const curve = curves[look.kind];
  const half = look.length / 2;
  const step = 0.5;
  const upper: Section[] = [];
  let [x, y] = [0, 0];
  for (let along = 0; along <= half; along += step) {
    const slope = slopeAt(curve, along, half, bend) * degrees;
    upper.push({
      along,
      at: [x, y],
      towardsBack: [-Math.sin(slope), Math.cos(slope)],
      deep: deepAt(look, curve, along, half),
    });
    x += Math.cos(slope) * step;
    y += Math.sin(slope) * step;
  }
  const lower = upper.slice(1).map((section) => ({
    ...section,
    along: -section.along,
    at: [-section.at[0], section.at[1]] as const,
    towardsBack: [-section.towardsBack[0], section.towardsBack[1]] as const,
  }));
  return [...lower.reverse(), ...upper];
}

/** A line at a share of the thickness: 0 is the belly, 1 the back. */
export function lineAt(bow: readonly Section[], share: number): Point[] {
  return bow.map(({ at, towardsBack, deep }) => {
    const off = (share - 1) * deep;
    return [at[0] + towardsBack[0] * off, at[1] + towardsBack[1] * off];
  });
}

/** How far the riser reaches below the back, inches, along its length; the grip is its deepest curve. */
const risers: Record<BowLook['kind'], readonly Point[]> = {
  longbow: [
    [-8.5, 0.55],
    [-6.5, 0.8],
    [-4.2, 1.55],
    [-2.4, 2.05],
    [-0.6, 1.85],
    [0.8, 1.9],
    [2.2, 2.15],
    [3.4, 2.05],
    [5.5, 1.25],
    [7.2, 0.75],
    [8.5, 0.55],
  ],
  hybrid: [
    [-8.5, 0.6],
    [-6.6, 1.0],
    [-4.6, 2.0],
    [-3.0, 2.45],
    [-1.2, 1.95],
    [0.2, 1.6],
    [1.5, 1.95],
    [2.6, 2.5],
    [4.2, 2.3],
    [6.6, 1.05],
    [8.5, 0.6],
  ],
  recurve: [
    [-9.5, 0.7],
    [-7.6, 1.35],
    [-5.4, 2.5],
    [-3.4, 3.0],
    [-1.6, 2.3],
    [-0.2, 1.75],
    [1.1, 2.2],
    [2.2, 2.95],
    [4.2, 2.75],
    [7.2, 1.4],
    [9.5, 0.7],
  ],
};

export function riserOutline(look: BowLook): { belly: Point[]; back: Point[]; half: number } {
  const { kind } = look;
  const bolted = look.takeDown === 'bolted three-piece';
  const rise = kind === 'recurve' || bolted ? 0.55 : 0.12;
  const half = curves[kind].riser;
  const belly = risers[kind].map(([x, deep]): Point => [x, -deep]);
  const back = [-1, -0.75, -0.4, 0, 0.4, 0.75, 1].map(
    (share): Point => [share * half, rise * (1 - share ** 2)],
  );
  return { belly, back, half };
}
