import type { BowFields, Face } from '../../shared/contract/bows.ts';
import type { LimbSetFields } from '../../shared/contract/limb-sets.ts';
import type { BowLook } from '../pictures/look.ts';
import type { Glass, Wood } from '../pictures/materials.ts';

export interface DemoBow {
  key: string;
  /** Whose it is; none means the shop's own. */
  owner: string | null;
  fields: BowFields;
  look: BowLook;
  limbSets: readonly LimbSetFields[];
}

/** What such a bow is usually braced to, inches (common practice). */
const braces: Record<BowFields['kind'], Pick<BowFields, 'braceLowIn' | 'braceHighIn'>> = {
  longbow: { braceLowIn: 6.5, braceHighIn: 7.5 },
  hybrid: { braceLowIn: 7, braceHighIn: 8 },
  recurve: { braceLowIn: 7.5, braceHighIn: 8.5 },
};

export interface BowSketch {
  owner: string | null;
  kind: BowFields['kind'];
  made?: BowFields['construction'];
  takeDown?: BowFields['takeDown'];
  maker: string;
  model: string;
  serial?: string;
  hand?: BowFields['hand'];
  /** AMO length as marked, inches. */
  amo: number | null;
  /** Marked weight, pounds, and the draw it is marked at. */
  marked: number | null;
  at?: number | null;
  reference?: BowFields['markedDrawReference'];
  safe?: number | null;
  back?: Face['facing'];
  belly?: Face['facing'];
  glassHow?: Face['glassHow'];
  limb: Wood;
  riser: Wood;
  accent?: Wood;
  glass?: Glass;
  core?: string;
  moisture?: number;
  listed?: BowFields['listedSpecies'];
  notes?: string;
  limbSets?: readonly LimbSetFields[];
}

const kinds = {
  longbow: { profile: 'straight', fade: 9, shorter: 1.25, recurve: null, throat: 0.5 },
  hybrid: { profile: 'reflex-deflex', fade: 9.25, shorter: 2, recurve: null, throat: 1 },
  recurve: { profile: 'recurve', fade: 10, shorter: 3.5, recurve: 2.5, throat: 1.5 },
} as const;

function faceOf(facing: Face['facing'], how: Face['glassHow'], now: number): Face {
  const measured =
    (facing === 'E-glass' || facing === 'clear over veneer') && how !== 'not-measured';
  return {
    facing,
    glassMadeIn: measured ? 0.05 : null,
    glassNowIn: measured && how !== 'maker' ? now : null,
    glassHow: measured ? how : 'not-measured',
  };
}

function lookOf(sketch: BowSketch, made: BowFields['construction']): BowLook {
  const wooden = made === 'all-wood' || sketch.back === 'bamboo';
  return {
    kind: sketch.kind,
    takeDown: sketch.takeDown ?? 'one-piece',
    length: sketch.amo ?? 62,
    limb: sketch.limb,
    riser: sketch.riser,
    accent: sketch.accent ?? 'maple',
    glass: wooden ? null : (sketch.glass ?? 'black'),
    grip: sketch.kind === 'longbow' ? 'leather' : 'bare',
  };
}

/** A pair of limbs with the riser it was marked on. */
export const limbSet = (
  name: string,
  marked: number,
  serials: readonly [string, string],
  riserName: string,
  riserLengthIn: number,
): LimbSetFields => ({
  name,
  upperSerial: serials[0],
  lowerSerial: serials[1],
  amoLengthIn: 60,
  markedWeightLbf: marked,
  markedDrawIn: 28,
  markedDrawReference: 'amo',
  riserName,
  riserLengthIn,
  riserPadDeg: 12,
  notes: '',
});

/** A bow with everything that follows from what was sketched. Lengths are common practice for its kind. */
export function makeBow(key: string, sketch: BowSketch): DemoBow {
  const made = sketch.made ?? 'glass-laminated';
  const shape = kinds[sketch.kind];
  const how = sketch.glassHow ?? 'not-measured';
  const back = sketch.back ?? (made === 'all-wood' ? 'wood' : 'E-glass');
  const belly = sketch.belly ?? back;
  const limb = {
    fadeIn: sketch.amo === null ? null : shape.fade,
    limbIn: sketch.amo === null ? null : sketch.amo / 2 - shape.fade,
  };
  const isWood = made === 'all-wood' || belly === 'wood';
  return {
    key,
    owner: sketch.owner,
    look: lookOf(sketch, made),
    limbSets: sketch.limbSets ?? [],
    fields: {
      kind: sketch.kind,
      construction: made,
      takeDown: sketch.takeDown ?? 'one-piece',
      hand: sketch.hand ?? 'right',
      maker: sketch.maker,
      model: sketch.model,
      serial: sketch.serial ?? '',
      amoLengthIn: sketch.amo,
      tipToTipIn: sketch.amo === null ? null : sketch.amo - shape.shorter,
      markedWeightLbf: sketch.marked,
      markedDrawIn: sketch.marked === null || sketch.at === null ? null : (sketch.at ?? 28),
      markedDrawReference: sketch.reference ?? 'amo',
      maxSafeDrawIn: sketch.safe === undefined ? 30 : sketch.safe,
      profile: shape.profile,
      recurveDepthIn: shape.recurve,
      throatToFadeIn: shape.throat,
      limbPadDeg: sketch.takeDown === 'bolted three-piece' ? 12 : null,
      limbs: { upper: limb, lower: limb },
      faces: { back: faceOf(back, how, 0.049), belly: faceOf(belly, how, 0.047) },
      coreWood: sketch.core ?? sketch.limb,
      moisturePct: isWood ? (sketch.moisture ?? 9) : null,
      edgeRadiusIn: 0.06,
      lowStretchTips: sketch.kind === 'longbow' && made === 'all-wood' ? 'no' : 'unknown',
      ...braces[sketch.kind],
      listedSpecies: sketch.listed ?? 'none',
      notes: sketch.notes ?? '',
    },
  };
}
