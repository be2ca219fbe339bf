/** A station as the cut card draws it, inches. */
export interface CardStation {
  fromFadeIn: number;
  widthNowIn: number;
  offLeftIn: number;
  offRightIn: number;
}

export interface LimbShape {
  /** Closed outline of the limb as it is. */
  outline: string;
  /** Bands that come off, one a side at most. */
  cuts: string[];
  stations: { x: number; top: number; bottom: number; fromFadeIn: number }[];
}

export const drawing = { width: 1000, height: 150, edge: 24, tallest: 96, deepest: 16 } as const;

const point = (x: number, y: number) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/**
 * A limb as it lies on the bench, fade to the left and tip to the right, its left edge (seen from
 * the belly with the tip up) on top. Widths are to one scale; the bands that come off are drawn
 * deeper than they are, the deepest of both limbs the same on either, for a cut is a hair wide.
 */
export function limbShape(
  stations: readonly CardStation[],
  scale: { lengthIn: number; widestIn: number; deepestIn: number },
): LimbShape {
  const { width, height, edge, tallest, deepest } = drawing;
  const x = (fromFadeIn: number) => edge + (fromFadeIn / scale.lengthIn) * (width - 2 * edge);
  const half = (widthIn: number) => (widthIn / scale.widestIn) * (tallest / 2);
  const depth = (offIn: number) => (scale.deepestIn > 0 ? (offIn / scale.deepestIn) * deepest : 0);
  const at = [...stations]
    .sort((a, b) => a.fromFadeIn - b.fromFadeIn)
    .map((station) => ({
      fromFadeIn: station.fromFadeIn,
      x: x(station.fromFadeIn),
      top: height / 2 - half(station.widthNowIn),
      bottom: height / 2 + half(station.widthNowIn),
      left: depth(station.offLeftIn),
      right: depth(station.offRightIn),
    }));
  const top = at.map((s) => point(s.x, s.top));
  const bottom = at.map((s) => point(s.x, s.bottom)).reverse();
  const outline = `M${[...top, ...bottom].join('L')}Z`;
  const cuts: string[] = [];
  if (at.some(({ left }) => left > 0)) {
    const inner = at.map((s) => point(s.x, s.top + s.left)).reverse();
    cuts.push(`M${[...top, ...inner].join('L')}Z`);
  }
  if (at.some(({ right }) => right > 0)) {
    const inner = at.map((s) => point(s.x, s.bottom - s.right));
    cuts.push(`M${[...inner, ...bottom].join('L')}Z`);
  }
  return {
    outline,
    cuts,
    stations: at.map(({ fromFadeIn, x: place, top: from, bottom: to }) => ({
      fromFadeIn,
      x: place,
      top: from,
      bottom: to,
    })),
  };
}
