import type { PlanBowInput, PlanFaceInput } from '../../../shared/plan-input.ts';
import { glassGpa, unknownCoreGpa } from './core-moduli.ts';
import {
  typicalEdgeRadiusIn,
  typicalHookPart,
  typicalOf,
  typicalOffsetIn,
  typicalStations,
} from './typical.ts';

const { fadeIn, limbIn, braceIn, glassIn } = typicalOf.longbow;
const face: PlanFaceInput = { facing: 'E-glass', glassNowIn: glassIn, glassMadeIn: null };
const limb: PlanBowInput['upper'] = {
  fadeIn,
  fadeOffsetIn: typicalOffsetIn,
  padDeg: 0,
  lengthIn: limbIn,
  stations: typicalStations('longbow', limbIn),
};

/** A glass-laminated longbow of usual sizes: where a what-if without records begins. */
export const blankBow: PlanBowInput = {
  kind: 'longbow',
  construction: 'glass-laminated',
  back: face,
  belly: face,
  upper: limb,
  lower: limb,
  reflexIn: 0,
  recurveIn: 0,
  recurveFromPart: typicalHookPart,
  braceIn,
  edgeRadiusIn: typicalEdgeRadiusIn,
  maxSafeDrawIn: null,
  coreGpa: unknownCoreGpa,
  glassGpa,
  section: 'unknown',
  surface: 'bare',
};
