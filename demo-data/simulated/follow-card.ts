import type { BenchStep } from '../../shared/contract/bench-work.ts';
import type { JobWorld } from './job-world.ts';

type Step<Kind extends BenchStep['kind']> = Extract<BenchStep, { kind: Kind }>;

/** The hand follows the card, and misses as hands do. */
export function followCard(world: JobWorld, { method, upper, lower, face }: Step<'bite'>): void {
  const limb = (work: typeof upper) => ({
    cuts: work.cuts.map((cut) => ({
      fromFadeIn: cut.fromFadeIn,
      leftIn: cut.offLeftIn,
      rightIn: cut.offRightIn,
    })),
    face,
    bellyThou: work.bellyThou,
    backThou: work.backThou,
    edgeRadiusIn: null,
  });
  const removal = { upper: limb(upper), lower: limb(lower) };
  if (method === 'narrow') world.cut(removal);
  else if (method === 'strokes') world.stroke(removal);
  else world.thin(removal);
}

/** Widths that a calliper reads at the cut places, inches. */
export function widthsAt(world: JobWorld, { places }: Step<'remeasure'>) {
  const read = world.widthsIn();
  return places.map(({ limb, fromFadeIn }) => {
    const at = world.bow.placesIn.indexOf(fromFadeIn);
    return { limb, fromFadeIn, widthIn: read[limb][at] ?? 0 };
  });
}
