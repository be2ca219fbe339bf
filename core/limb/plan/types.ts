import type { Limb } from '../../../shared/bows.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import type { LimbRemoval } from '../removal.ts';
import type { CutFace } from '../side-cut.ts';
import type { Solved } from '../solved.ts';
import type { WeightForecast } from './forecast.ts';
import type { PlanLimits } from './limits.ts';
import type { Densities } from './mass.ts';
import type { CutStation, Refusal } from './refusals.ts';
import type { Hinge, StrainChange } from './strain.ts';
import type { CutShape } from './work.ts';

/** All may be left out. */
export interface PlanOptions {
  limits: PlanLimits;
  cutShape: CutShape;
  /** The face that side cuts narrow; one alone traps the section. */
  face: CutFace;
  densities: Densities;
  /** Asked for, in any order; null for all that suit the bow. */
  methods: readonly PlanMethod[] | null;
  /** Spread of the effectiveness that a bow of unknown section has at least (common practice). */
  unknownSectionSd: number;
}

/** Both faces of one limb, inches or thousandths as the name says. */
export interface Faces {
  belly: number;
  back: number;
}

/** Widths at one station. What is off is off the work alone; sanding takes no width. */
export interface PlanStation {
  fromFadeIn: number;
  presentWidthIn: Faces;
  newWidthIn: Faces;
  offPerSideIn: number;
  offTotalIn: number;
  presentThicknessIn: number;
  /** After the work, before finishing. */
  newThicknessIn: number;
}

export interface LimbPlan {
  /** The work, finishing not included; what `predictRemoval` takes. */
  removal: LimbRemoval;
  /** The full cut, off each side and off both, inches. */
  offPerSideIn: number;
  offTotalIn: number;
  /** Off each face by the work, thousandths of an inch. */
  offThou: Faces;
  /** Part of the whole work that this limb gets, by its amount; 0 when there is no work. */
  sharePart: number;
  /** After finishing, inches; null on a face without glass. */
  glassLeftIn: { belly: number | null; back: number | null };
  /** Every measured place and every end of a cut, outwards. */
  stations: PlanStation[];
}

export interface TillerPlan {
  nowIn: number;
  targetIn: number;
  afterWorkIn: number;
  /** After finishing. */
  afterIn: number;
  /** Within 1/64 in of the target. */
  reached: boolean;
}

export interface StrainPlan {
  /** Largest surface strain at full draw, no unit; after finishing. */
  peakBefore: number;
  peakAfter: number;
  /** Places whose strain rises by more than 5 %. */
  hinges: Hinge[];
  /** Both limbs from fade to tip. */
  along: StrainChange[];
}

/** One way to the target, with all that speaks for and against it. */
export interface MethodPlan {
  method: PlanMethod;
  upper: LimbPlan;
  lower: LimbPlan;
  afterWork: WeightForecast;
  afterFinishing: WeightForecast;
  finishingTakesLbf: number;
  /** What the work aims at: target, reserve and what finishing takes, lbf. */
  aimLbf: number;
  tiller: TillerPlan;
  /** Among the cut stations; null where none is cut. */
  narrowest: CutStation | null;
  weakestSide: CutStation | null;
  strain: StrainPlan;
  /** Mass as if at the nock, both limbs, pounds; after finishing. */
  tipMass: { beforeLb: number; afterLb: number; changePart: number };
  /** The forecast after finishing is no higher than target and reserve. */
  reachesTarget: boolean;
  refusals: Refusal[];
  /** What to know beforehand, one sentence each. */
  notes: string[];
}

export interface MethodOutcome {
  method: PlanMethod;
  plan: Solved<MethodPlan>;
}

/** How much the order asks for altogether. */
export interface TotalDrop {
  lbf: number;
  part: number;
  level: 'small' | 'note' | 'confirm' | 'refused';
  /** Null when small. */
  sentence: string | null;
}

/** The lowest weight that no limit forbids. */
export interface LowestWeight {
  /** After finishing, lbf. */
  weightLbf: number;
  /** Null when even sanding breaks a limit, and the bow stays as it is. */
  method: PlanMethod | null;
  /** Why no method goes lower, one sentence each. */
  why: string[];
}

export interface ReductionPlan {
  drop: TotalDrop;
  /** Sanding first, then in the order of `planMethods`. */
  methods: MethodOutcome[];
  /** The first without a refusal that reaches the target. */
  recommended: PlanMethod | null;
  /** Only where nothing is recommended. */
  lowest: LowestWeight | null;
}

export type PerLimb<Value> = Record<Limb, Value>;
