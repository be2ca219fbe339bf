import type { BowFields, Face } from './contract/bows.ts';

export interface FieldTrouble {
  /** Path of the field that should be looked at, as the contract names it: `faces.back.glassNowIn`. */
  field: string;
  sentence: string;
}

type Facing = Face['facing'];

const glassFacings: readonly Facing[] = ['E-glass', 'clear over veneer'];
const woodFacings: readonly Facing[] = ['wood', 'bamboo'];
const sides = ['back', 'belly'] as const;

export const isGlass = (facing: Facing): boolean => glassFacings.includes(facing);

/** Moisture of the wood is read where wood or bamboo lies bare; glass and carbon keep the probe off. */
export function takesMoisture(bow: Pick<BowFields, 'construction' | 'faces'>): boolean {
  return (
    bow.construction === 'all-wood' ||
    sides.some((side) => woodFacings.includes(bow.faces[side].facing))
  );
}

function ofFace(side: 'back' | 'belly', face: Face): FieldTrouble[] {
  const at = (key: keyof Face) => `faces.${side}.${key}`;
  const { glassMadeIn: made, glassNowIn: now, glassHow: how } = face;
  const isMeasured = made !== null || now !== null;
  const troubles: FieldTrouble[] = [];
  if (isMeasured && !isGlass(face.facing)) {
    troubles.push({
      field: at(now === null ? 'glassMadeIn' : 'glassNowIn'),
      sentence: `A glass thickness of the ${side} needs a facing of E-glass or clear glass over veneer.`,
    });
  }
  if (made !== null && now !== null && now > made) {
    troubles.push({
      field: at('glassNowIn'),
      sentence: `The glass of the ${side} cannot be thicker now than when it was made.`,
    });
  }
  if (isMeasured && how === 'not-measured') {
    troubles.push({
      field: at('glassHow'),
      sentence: `Say how the glass of the ${side} was measured.`,
    });
  }
  if (!isMeasured && how !== 'not-measured') {
    troubles.push({
      field: at('glassNowIn'),
      sentence: `Give the thickness that was read on the ${side}, or choose "not measured".`,
    });
  }
  return troubles;
}

function ofConstruction({ construction, faces }: BowFields): FieldTrouble[] {
  if (construction === 'all-wood') {
    return sides
      .filter((side) => isGlass(faces[side].facing) || faces[side].facing === 'carbon')
      .map((side) => ({
        field: `faces.${side}.facing`,
        sentence: `An all-wood bow has wood or bamboo on its ${side}, no ${faces[side].facing === 'carbon' ? 'carbon' : 'glass'}.`,
      }));
  }
  const isBare = sides.every((side) => woodFacings.includes(faces[side].facing));
  if (construction !== 'glass-laminated' || !isBare) return [];
  return [
    {
      field: 'faces.back.facing',
      sentence: 'A glass-laminated bow has glass on its back or its belly.',
    },
  ];
}

function ofMarking(fields: BowFields): FieldTrouble[] {
  const { maxSafeDrawIn } = fields;
  const troubles = markingTroubles(fields);
  if (
    fields.markedDrawIn !== null &&
    maxSafeDrawIn !== null &&
    fields.markedDrawIn > maxSafeDrawIn
  ) {
    troubles.push({
      field: 'maxSafeDrawIn',
      sentence: 'The marked draw is past the maximum safe draw: check which of the two is right.',
    });
  }
  return troubles;
}

/** A draw length marked without a weight marks nothing. */
export function markingTroubles(
  fields: Pick<BowFields, 'markedWeightLbf' | 'markedDrawIn'>,
): FieldTrouble[] {
  if (fields.markedWeightLbf !== null || fields.markedDrawIn === null) return [];
  return [
    {
      field: 'markedWeightLbf',
      sentence: 'A marked draw length needs the marked weight. Give it, or leave both empty.',
    },
  ];
}

function ofBrace({ braceLowIn, braceHighIn }: BowFields): FieldTrouble[] {
  if (braceLowIn === null || braceHighIn === null || braceLowIn <= braceHighIn) return [];
  return [
    {
      field: 'braceHighIn',
      sentence: `The highest brace cannot be under the lowest, ${braceLowIn}": check which is which.`,
    },
  ];
}

/** Tips are measured to the nock or past it: up to an inch a side (common practice). */
const pastTheNocksIn = 2;

function ofLengths({ limbs, tipToTipIn, profile, recurveDepthIn }: BowFields): FieldTrouble[] {
  const troubles: FieldTrouble[] = [];
  const parts = [limbs.upper.fadeIn, limbs.upper.limbIn, limbs.lower.fadeIn, limbs.lower.limbIn];
  const known = parts.filter((part) => part !== null);
  const alongBow = known.reduce((sum, part) => sum + part, 0);
  if (
    tipToTipIn !== null &&
    known.length === parts.length &&
    tipToTipIn > alongBow + pastTheNocksIn
  ) {
    troubles.push({
      field: 'tipToTipIn',
      sentence: `Fades and limbs come to ${Number(alongBow.toFixed(3))}" together: the tips cannot be ${tipToTipIn}" apart.`,
    });
  }
  if (
    recurveDepthIn !== null &&
    recurveDepthIn > 0 &&
    profile !== 'recurve' &&
    profile !== 'unknown'
  ) {
    troubles.push({
      field: 'recurveDepthIn',
      sentence:
        'Only a recurve profile has a recurve depth: change the profile, or leave it empty.',
    });
  }
  return troubles;
}

/** What does not fit together in a bow's fields, each naming the field to look at. */
export function bowTroubles(fields: BowFields): FieldTrouble[] {
  const moisture: FieldTrouble[] =
    fields.moisturePct === null || takesMoisture(fields)
      ? []
      : [
          {
            field: 'moisturePct',
            sentence: 'Moisture is read on bare wood or bamboo; this bow shows none.',
          },
        ];
  return [
    ...ofMarking(fields),
    ...ofConstruction(fields),
    ...sides.flatMap((side) => ofFace(side, fields.faces[side])),
    ...ofLengths(fields),
    ...ofBrace(fields),
    ...moisture,
  ];
}
