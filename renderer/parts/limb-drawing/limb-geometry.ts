/** A place along a limb as it is drawn: half-sizes off the centre line and what comes off, inches. */
export interface LimbPlace {
  fromFadeIn: number;
  /** Upper and lower edge of the drawing. */
  topIn: number;
  bottomIn: number;
  offTopIn: number;
  offBottomIn: number;
}

export interface LimbScale {
  /** Of the longer limb, so that both are drawn alike. */
  lengthIn: number;
  /** Widest place of both limbs, edge to edge. */
  widestIn: number;
  /** Deepest cut on any side of both limbs. */
  deepestIn: number;
  /** Centre line to edge where the limb is slimmest among the deep cuts. */
  slimmestIn: number;
}

export interface LimbPaths {
  height: number;
  middle: number;
  /** Closed outline of the limb as it is. */
  outline: string;
  /** Edges after the work; empty where nothing comes off. */
  newEdges: string[];
  /** Closed bands that come off. */
  bands: string[];
}

/** Of the drawing, in its own units. */
export const sheet = { width: 1000, side: 22, above: 10 } as const;

/** A cut is a hair wide: it is drawn about this deep, in units, where the limb leaves room. */
const seenUnits = 7;
const mostOfHalf = 0.5;
const mostTimes = 200;
/** Thinner than a calliper reads: nothing comes off. */
const leastIn = 1e-5;

/** Units per inch, the same along and across. */
export const unitsPerIn = (lengthIn: number): number =>
  (sheet.width - 2 * sheet.side) / Math.max(lengthIn, 1);

export const placeOf = (fromFadeIn: number, lengthIn: number): number =>
  sheet.side + fromFadeIn * unitsPerIn(lengthIn);

/** How many times deeper than they are the cuts are drawn: 1 where they show by themselves. */
export function timesDeeper({ lengthIn, deepestIn, slimmestIn }: LimbScale): number {
  if (!(deepestIn > leastIn)) return 1;
  const units = unitsPerIn(lengthIn);
  const times = Math.min(seenUnits, mostOfHalf * slimmestIn * units) / (deepestIn * units);
  return Math.min(mostTimes, Math.max(1, Math.round(times)));
}

export function scaleOf(limbs: readonly (readonly LimbPlace[])[]): LimbScale {
  const all = limbs.flat();
  const sides = all.flatMap((place) => [
    { halfIn: place.topIn, offIn: place.offTopIn },
    { halfIn: place.bottomIn, offIn: place.offBottomIn },
  ]);
  const most = (values: number[]) => Math.max(0, ...values);
  const deepestIn = most(sides.map(({ offIn }) => offIn));
  const deep = sides.filter(({ offIn }) => offIn > leastIn && offIn >= deepestIn / 2);
  return {
    lengthIn: most(all.map(({ fromFadeIn }) => fromFadeIn)),
    widestIn: most(all.map(({ topIn, bottomIn }) => topIn + bottomIn)),
    deepestIn,
    slimmestIn: deep.length === 0 ? 0 : Math.min(...deep.map(({ halfIn }) => halfIn)),
  };
}

interface Point {
  x: number;
  y: number;
}

const at = ({ x, y }: Point) => `${x.toFixed(2)} ${y.toFixed(2)}`;
const open = (points: readonly Point[]) => `M${points.map(at).join('L')}`;
const closed = (there: readonly Point[], back: readonly Point[]) =>
  `${open([...there, ...back.toReversed()])}Z`;

/** Runs of places where something comes off, with a place on either side to taper out to. */
function runs(offs: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  let from: number | null = null;
  for (const [i, off] of [...offs, 0].entries()) {
    const isCut = off > leastIn;
    if (isCut && from === null) from = Math.max(0, i - 1);
    if (!isCut && from !== null) {
      found.push([from, Math.min(i, offs.length - 1)]);
      from = null;
    }
  }
  return found;
}

/**
 * One limb, fade to the left and tip to the right, to one scale along and across; the bands that
 * come off are drawn {@link timesDeeper} than they are, never past the centre line.
 */
export function limbPaths(places: readonly LimbPlace[], scale: LimbScale): LimbPaths {
  const units = unitsPerIn(scale.lengthIn);
  const times = timesDeeper(scale);
  const middle = sheet.above + (scale.widestIn * units) / 2;
  const paths: LimbPaths = { height: 2 * middle, middle, outline: '', newEdges: [], bands: [] };
  if (places.length < 2) return paths;
  const x = ({ fromFadeIn }: LimbPlace) => placeOf(fromFadeIn, scale.lengthIn);
  const edge = (sign: 1 | -1, half: (place: LimbPlace) => number) =>
    places.map((place) => ({ x: x(place), y: middle + sign * half(place) * units }));
  const sides = [
    { sign: -1 as const, half: (p: LimbPlace) => p.topIn, off: (p: LimbPlace) => p.offTopIn },
    { sign: 1 as const, half: (p: LimbPlace) => p.bottomIn, off: (p: LimbPlace) => p.offBottomIn },
  ];
  const [top = [], bottom = []] = sides.map(({ sign, half }) => edge(sign, half));
  paths.outline = closed(top, bottom);
  for (const { sign, half, off } of sides) {
    const present = edge(sign, half);
    const next = edge(sign, (place) => Math.max(0, half(place) - times * off(place)));
    for (const [from, to] of runs(places.map(off))) {
      const cut = next.slice(from, to + 1);
      paths.bands.push(closed(present.slice(from, to + 1), cut));
      paths.newEdges.push(open(cut));
    }
  }
  return paths;
}
