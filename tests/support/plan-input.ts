import type { PlanInput, PlanLimbInput } from '../../shared/plan-input.ts';
import { longbow } from './sample-limbs.ts';

const { upper } = longbow();
const limb: PlanLimbInput = {
  fadeIn: upper.fadeIn,
  fadeOffsetIn: upper.fadeOffsetIn,
  padDeg: upper.padDeg,
  lengthIn: upper.profile.lengthIn,
  stations: [...upper.profile.stations],
};
const face = { facing: 'E-glass' as const, glassNowIn: 0.04, glassMadeIn: 0.05 };

/** A longbow of 52 lb with a small tiller fault, to be 45 lb. */
export const longbowInput: PlanInput = {
  bow: {
    kind: 'longbow',
    construction: 'glass-laminated',
    back: face,
    belly: face,
    upper: limb,
    lower: limb,
    reflexIn: 0,
    recurveIn: 0,
    recurveFromPart: 0.64,
    braceIn: 7,
    edgeRadiusIn: 1 / 16,
    maxSafeDrawIn: 30,
    coreGpa: 11,
    glassGpa: 38.6,
    section: 'measured',
    surface: 'bare',
  },
  wish: {
    weightLbf: 52,
    weightSdLbf: 0.2,
    drawIn: 28,
    targetLbf: 45,
    tillerIn: 0,
    tillerTargetIn: 1 / 16,
    sanding: 'full strip',
    allowanceMeanThou: 1.4,
    allowanceSdThou: 0.6,
    reserveLbf: 0.5,
    effectivenessMean: 1,
    effectivenessSd: 0.12,
  },
  choices: {
    cutShape: { fromIn: 2, fullFromIn: 3, carriedPart: 0.5, endsShortIn: 0 },
    face: 'both',
    methods: null,
  },
  readings: [],
  ownDrawIn: 27,
};

export function changedInput(change: {
  bow?: Partial<PlanInput['bow']>;
  wish?: Partial<PlanInput['wish']>;
  choices?: Partial<PlanInput['choices']>;
  readings?: PlanInput['readings'];
}): PlanInput {
  return {
    ...longbowInput,
    ...(change.readings === undefined ? {} : { readings: change.readings }),
    bow: { ...longbowInput.bow, ...change.bow },
    wish: { ...longbowInput.wish, ...change.wish },
    choices: { ...longbowInput.choices, ...change.choices },
  };
}
