import type { BowLook } from './look.ts';
import { glasses, woods } from './materials.ts';
import { lineAt, riserOutline, type Section, sections } from './profile.ts';
import { grained, type Point, polyline, shadow, shadowClass, shape, smooth } from './svg.ts';

export interface Place {
  /** Pixels to an inch. */
  scale: number;
  /** Middle of the bow, pixels. */
  x: number;
  y: number;
  /** Degrees, clockwise. */
  turn: number;
}

const onPage = (points: readonly Point[], scale: number): Point[] =>
  points.map(([x, y]) => [x * scale, -y * scale]);

function stripe(bow: readonly Section[], from: number, to: number, scale: number): string {
  const outline = [...lineAt(bow, to), ...lineAt(bow, from).reverse()];
  return polyline(onPage(outline, scale), true);
}

function limbs(look: BowLook, bow: readonly Section[], scale: number): string {
  const whole = stripe(bow, 0, 1, scale);
  const core = grained(whole, woods[look.limb], 'fine');
  if (look.glass === null) {
    return core + shape(stripe(bow, 0.72, 1, scale), 'fill="#f0dcae" opacity="0.55"');
  }
  const facing = look.glass === 'clear' ? '#f4e6c4' : glasses[look.glass];
  const accent = shape(stripe(bow, 0.44, 0.54, scale), `fill="${woods[look.accent]}"`);
  return (
    core +
    accent +
    shape(stripe(bow, 0, 0.24, scale), `fill="${facing}"`) +
    shape(stripe(bow, 0.78, 1, scale), `fill="${facing}"`) +
    shape(stripe(bow, 0.9, 1, scale), 'fill="#fff" opacity="0.28"')
  );
}

function riser(look: BowLook, scale: number): string {
  const { belly, back, half } = riserOutline(look);
  const outline = smooth(onPage([...belly, ...back.toReversed()], scale), true);
  const window = smooth(
    onPage(
      [
        [2.4, -0.1],
        [2.6, -1.5],
        [4.4, -1.55],
        [6.4, -0.75],
        [7.2, -0.1],
      ],
      scale,
    ),
    true,
  );
  const swoosh = smooth(
    onPage(
      [
        [-half, -0.35],
        [-half * 0.5, -0.75],
        [0, -1.1],
        [half * 0.5, -0.75],
        [half, -0.35],
      ],
      scale,
    ),
  );
  const base =
    grained(outline, woods[look.riser], 'wood') +
    shape(swoosh, `fill="none" stroke="${woods[look.accent]}" stroke-width="${scale * 0.16}"`) +
    shape(window, 'fill="#000" opacity="0.26"') +
    shape(outline, 'fill="url(#sheen)" opacity="0.55"');
  return base + (look.grip === 'leather' ? gripWrap(belly, scale) : '');
}

function gripWrap(belly: readonly Point[], scale: number): string {
  const low = belly.filter(([x]) => x > -3.2 && x < 2);
  const top = [...low].reverse().map(([x]): Point => [x, 0.14]);
  const outline = smooth(onPage([...low, ...top], scale), true);
  const lacing = Array.from({ length: 9 }, (_, place) => {
    const x = (-2.5 + place * 0.5) * scale;
    return `<path d="M${x} ${scale * 0.5} l${scale * 0.28} ${scale * 0.34}" stroke="#d8c39a" stroke-width="1.4"/>`;
  }).join('');
  return `${grained(outline, '#4b2f1e', 'cloth')}${shape(outline, 'fill="url(#sheen)" opacity="0.35"')}${lacing}`;
}

/** Bolts and pads of a bow in three pieces, or the sleeve of one in two. */
function joints(look: BowLook, bow: readonly Section[], scale: number): string {
  if (look.takeDown === 'sleeve') {
    return (
      `<rect x="${-0.1 * scale}" y="${-0.3 * scale}" width="${0.22 * scale}" height="${2.3 * scale}" fill="#141414"/>` +
      `<rect x="${-2.2 * scale}" y="${-0.28 * scale}" width="${0.5 * scale}" height="${2.35 * scale}" fill="#b89a4a"/>`
    );
  }
  if (look.takeDown === 'one-piece') return '';
  return [-1, 1]
    .map((side) => {
      const pad = bow.filter(({ along }) => along * side > 5.6 && along * side < 9.6);
      const bolt = pad.find(({ along }) => along * side >= 7.5);
      const at = bolt?.at ?? [0, 0];
      return (
        shape(stripe(pad, -0.14, 0.02, scale), `fill="${woods.ebony}"`) +
        `<rect x="${(at[0] - 0.28) * scale}" y="${-(at[1] + 0.42) * scale}" width="${0.56 * scale}" height="${0.46 * scale}" rx="2" fill="#26272a"/>` +
        `<rect x="${(at[0] - 0.2) * scale}" y="${-(at[1] + 0.4) * scale}" width="${0.3 * scale}" height="${0.14 * scale}" fill="#9da0a3"/>`
      );
    })
    .join('');
}

function tips(bow: readonly Section[], scale: number): string {
  return [bow.slice(0, 4), bow.slice(-4)]
    .map((end) => shape(stripe(end, 0.3, 1.35, scale), `fill="${woods.ebony}"`))
    .join('');
}

function stringLine(bow: readonly Section[], bend: number, scale: number): string {
  const [first, last] = [bow[1], bow.at(-2)];
  if (first === undefined || last === undefined) return '';
  const [from, to] = onPage([first.at, last.at], scale);
  if (from === undefined || to === undefined) return '';
  const braced = bend > 0;
  const nock: Point = [0, (from[1] + to[1]) / 2 + Math.max(0, bend - 1) * 11 * scale];
  const path = braced
    ? polyline([from, nock, to])
    : smooth([
        from,
        [from[0] * 0.7, from[1] + 3.4 * scale],
        [-2 * scale, 4.6 * scale],
        [9 * scale, 3.9 * scale],
        [to[0] * 0.62, to[1] + 6.2 * scale],
        to,
      ]);
  const serving = braced
    ? shape(
        polyline([
          [-2 * scale, nock[1] - 2 * scale * Math.max(0, bend - 1) * 0.4],
          nock,
          [2 * scale, nock[1] - 2 * scale * Math.max(0, bend - 1) * 0.4],
        ]),
        'stroke="#1c1c1c" stroke-width="4.4" fill="none"',
      )
    : '';
  return (
    shape(
      path,
      `class="${shadowClass}" fill="none" stroke="#000" stroke-width="4" opacity="0.3" transform="translate(5 8)" filter="url(#blur2)"`,
    ) +
    shape(path, 'fill="none" stroke="#3d3a34" stroke-width="3"') +
    shape(path, 'fill="none" stroke="#cfc6ac" stroke-width="1" stroke-dasharray="5 4"') +
    serving
  );
}

/** A whole bow seen from its side. */
export function sideView(
  look: BowLook,
  place: Place,
  options: { bend?: number; string?: boolean } = {},
): string {
  const { scale } = place;
  const bow = sections(look, options.bend ?? 0);
  const { belly, back } = riserOutline(look);
  const riserPath = smooth(onPage([...belly, ...back.toReversed()], scale), true);
  return (
    `<g transform="translate(${place.x} ${place.y}) rotate(${place.turn})">` +
    shadow(stripe(bow, 0, 1, scale), 6, 10) +
    shadow(riserPath, 7, 12) +
    (options.string === false ? '' : stringLine(bow, options.bend ?? 0, scale)) +
    limbs(look, bow, scale) +
    riser(look, scale) +
    joints(look, bow, scale) +
    tips(bow, scale) +
    '</g>'
  );
}

/** A pair of limbs of a bolted bow without their riser. */
export function looseLimbs(look: BowLook, place: Place): string {
  const { scale } = place;
  const upper = sections(look, 0).filter(({ along }) => along >= 5.5);
  const limb = (turn: number, dx: number, dy: number) => {
    const pad = upper.filter(({ along }) => along < 9.5);
    const hole = upper.find(({ along }) => along >= 7.5)?.at ?? [0, 0];
    return (
      `<g transform="translate(${place.x + dx} ${place.y + dy}) rotate(${turn})"><g transform="translate(${-18 * scale} 0)">` +
      shadow(stripe(upper, 0, 1, scale), 6, 10) +
      limbs(look, upper, scale) +
      grained(stripe(pad, -0.4, 0.1, scale), woods[look.accent], 'fine') +
      `<circle cx="${hole[0] * scale}" cy="${-(hole[1] - 0.35) * scale}" r="${0.2 * scale}" fill="#111"/>` +
      shape(stripe(upper.slice(-4), 0.3, 1.35, scale), `fill="${woods.ebony}"`) +
      '</g></g>'
    );
  };
  return limb(4, -30, -110) + limb(176, 40, 130);
}
