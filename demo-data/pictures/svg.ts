export type Point = readonly [x: number, y: number];

const n = (value: number) => value.toFixed(1);

/** Straight lines through the points. */
export function polyline(points: readonly Point[], closed = false): string {
  const path = points.map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join(' ');
  return closed ? `${path} Z` : path;
}

/** A smooth line through the points: Catmull-Rom written as cubic Bezier pieces. */
export function smooth(points: readonly Point[], closed = false): string {
  const at = (place: number): Point => {
    const last = points.length - 1;
    const inside = closed
      ? (place + points.length) % points.length
      : Math.min(last, Math.max(0, place));
    return points[inside] ?? [0, 0];
  };
  const [x0, y0] = at(0);
  const pieces = [`M${n(x0)} ${n(y0)}`];
  const count = closed ? points.length : points.length - 1;
  for (let place = 0; place < count; place += 1) {
    const [before, from, to, after] = [at(place - 1), at(place), at(place + 1), at(place + 2)];
    const first: Point = [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6];
    const second: Point = [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6];
    pieces.push(
      `C${n(first[0])} ${n(first[1])} ${n(second[0])} ${n(second[1])} ${n(to[0])} ${n(to[1])}`,
    );
  }
  return closed ? `${pieces.join(' ')} Z` : pieces.join(' ');
}

export function shape(path: string, attributes: string): string {
  return `<path d="${path}" ${attributes}/>`;
}

export type Grain = 'wood' | 'fine' | 'cloth' | 'card';

/** A shape of one colour with grain over it. */
export function grained(path: string, fill: string, grain: Grain): string {
  return shape(path, `fill="${fill}"`) + shape(path, `fill="url(#${grain})"`);
}

/** What only darkens what lies under all things, and is drawn by itself. */
export const shadowClass = 'shadow';

/** A shadow as a lamp above the bench throws it. */
export function shadow(path: string, dx = 6, dy = 10, blur = 6, opacity = 0.45): string {
  return `<path class="${shadowClass}" d="${path}" transform="translate(${dx} ${dy})" fill="#000" opacity="${opacity}" filter="url(#blur${blur})"/>`;
}

/** Several points of a function, evenly spaced. */
export function sampled(count: number, at: (share: number) => Point): Point[] {
  return Array.from({ length: count + 1 }, (_, place) => at(place / count));
}
