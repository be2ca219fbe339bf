import { refuseField } from '../../shared/errors.ts';
import { type LimbProfile, type LimbStation, sizesOf } from './limb-profile.ts';
import { type CutFace, type SideCut, totalCut } from './side-cut.ts';

/** What is taken off one limb, or was. Everything that is zero or empty is left alone. */
export interface LimbRemoval {
  /** Rising places; smooth between them, nothing before the first or past the last. */
  cuts: readonly SideCut[];
  face: CutFace;
  /** Off the faces evenly over the whole limb, thousandths of an inch. */
  bellyThou: number;
  backThou: number;
  /** Radius that the edges have afterwards, inches; null keeps it. */
  edgeRadiusIn: number | null;
}

export const nothingTaken: LimbRemoval = {
  cuts: [],
  face: 'both',
  bellyThou: 0,
  backThou: 0,
  edgeRadiusIn: null,
};

function refuseOddCuts({ cuts, bellyThou, backThou }: LimbRemoval): void {
  for (const [i, cut] of cuts.entries()) {
    const before = cuts[i - 1];
    if (before !== undefined && !(cut.fromFadeIn > before.fromFadeIn)) {
      refuseField(
        'cuts',
        `The cuts are out of order: ${cut.fromFadeIn} in follows ${before.fromFadeIn} in.`,
      );
    }
    if (!(cut.leftIn >= 0 && cut.rightIn >= 0)) {
      refuseField(
        'cuts',
        `A cut ${cut.fromFadeIn} in from the fade cannot be negative: width is not put back.`,
      );
    }
  }
  if (!(bellyThou >= 0 && backThou >= 0)) {
    refuseField('thickness', 'Thinning cannot be negative: thickness is not put back.');
  }
}

/** Glass goes first; an all-wood limb loses wood. Never more than the face has. */
function thinned(glassIn: number, thou: number, name: string): number {
  if (glassIn === 0) return 0;
  const left = glassIn - thou / 1000;
  if (!(left > 0)) refuseField('thickness', `Nothing would be left of the ${name} glass.`);
  return left;
}

/**
 * The limb after something is taken off, as its own profile: stations at every measured and every
 * cut place. The limb before it is not touched.
 * @throws ShopError BAD_INPUT for cuts out of order or negative, or more than there is
 */
export function applyRemoval(profile: LimbProfile, removal: LimbRemoval): LimbProfile {
  refuseOddCuts(removal);
  const { cuts, face, bellyThou, backThou } = removal;
  const sizes = sizesOf(profile);
  const cutAt = totalCut(cuts);
  const places = new Set(profile.stations.map((station) => station.fromFadeIn));
  for (const cut of cuts) {
    if (cut.fromFadeIn >= 0 && cut.fromFadeIn <= profile.lengthIn) places.add(cut.fromFadeIn);
  }
  const stations = [...places]
    .sort((a, b) => a - b)
    .map((place): LimbStation => {
      const before = sizes(place);
      const cut = cutAt(place);
      return {
        fromFadeIn: place,
        bellyWidthIn: before.bellyWidthIn - (face === 'back' ? 0 : cut),
        backWidthIn: before.backWidthIn - (face === 'belly' ? 0 : cut),
        thicknessIn: before.thicknessIn - (bellyThou + backThou) / 1000,
      };
    });
  const { layup } = profile;
  return {
    ...profile,
    stations,
    ...(cuts.length === 0 ? {} : { cut: { before: profile, cuts, face } }),
    layup: {
      ...layup,
      bellyGlassIn: thinned(layup.bellyGlassIn, bellyThou, 'belly'),
      backGlassIn: thinned(layup.backGlassIn, backThou, 'back'),
    },
    edgeRadiusIn: removal.edgeRadiusIn ?? profile.edgeRadiusIn,
  };
}
