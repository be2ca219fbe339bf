import { bowTroubles } from '../../../shared/bow-checks.ts';
import { type BowFields, bowFields, type Face } from '../../../shared/contract/bows.ts';
import { fieldErrors } from '../../parts/field-errors.ts';

const emptyFace: Face = {
  facing: 'unknown',
  glassMadeIn: null,
  glassNowIn: null,
  glassHow: 'not-measured',
};

export const emptyBow: BowFields = {
  kind: 'longbow',
  construction: 'glass-laminated',
  takeDown: 'one-piece',
  hand: 'right',
  maker: '',
  model: '',
  serial: '',
  amoLengthIn: null,
  tipToTipIn: null,
  markedWeightLbf: null,
  markedDrawIn: null,
  markedDrawReference: 'unknown',
  maxSafeDrawIn: null,
  profile: 'unknown',
  recurveDepthIn: null,
  throatToFadeIn: null,
  limbPadDeg: null,
  limbs: { upper: { fadeIn: null, limbIn: null }, lower: { fadeIn: null, limbIn: null } },
  faces: { back: emptyFace, belly: emptyFace },
  coreWood: '',
  moisturePct: null,
  edgeRadiusIn: null,
  lowStretchTips: 'unknown',
  braceLowIn: null,
  braceHighIn: null,
  listedSpecies: 'unknown',
  notes: '',
};

/** What is wrong, by field path; empty when the bow can be written. */
export function bowErrors(value: BowFields): Record<string, string> {
  const troubles = bowTroubles(value)
    .toReversed()
    .map(({ field, sentence }) => [field, sentence]);
  return { ...Object.fromEntries(troubles), ...fieldErrors(bowFields, value) };
}

/** What every group of the bow form is given. */
export interface BowGroupProps {
  value: BowFields;
  set: (part: Partial<BowFields>) => void;
  errors: Record<string, string>;
}
