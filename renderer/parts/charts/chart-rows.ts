import type { ChartPoint, ChartSeries } from './chart-types.ts';

/** One place of the x axis with the figure of every series that has one there, under its name. */
export type ChartRow = { x: number } & Record<string, number>;

const sameX = 1e-9;

/** All series over one x axis, left to right. A series has no figure where it has no point. */
export function chartRows(series: readonly ChartSeries[]): ChartRow[] {
  const rows: ChartRow[] = [];
  const points = series.flatMap(({ name, points: own }) => own.map((point) => ({ name, point })));
  for (const { name, point } of points.toSorted((a, b) => a.point.x - b.point.x)) {
    const last = rows.at(-1);
    if (last !== undefined && point.x - last.x < sameX) last[name] = point.y;
    else rows.push({ x: point.x, [name]: point.y });
  }
  return rows;
}

/** From the lowest to the highest figure, with room around, ending on whole steps. */
export function rangeOf(values: readonly number[], step: number): [number, number] {
  const real = values.filter(Number.isFinite);
  if (real.length === 0) return [0, step];
  const [from, to] = [Math.floor(Math.min(...real) / step), Math.ceil(Math.max(...real) / step)];
  return [from * step, (from === to ? to + 1 : to) * step];
}

/** Round places to write figures at, never more than about `most`. */
export function ticksOf([from, to]: readonly [number, number], most = 7): number[] {
  const rough = (to - from) / most;
  if (!(rough > 0)) return [from];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? rough;
  const first = Math.ceil(from / step - sameX);
  const count = Math.floor(to / step + sameX) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) =>
    Number(((first + i) * step).toFixed(9)),
  );
}

/** A long series thinned for a table: about `most` points, the first and the last among them. */
export function thinned(points: readonly ChartPoint[], most = 14): ChartPoint[] {
  if (points.length <= most) return [...points];
  const step = (points.length - 1) / (most - 1);
  return Array.from({ length: most }, (_, i) => points[Math.round(i * step)]).filter(
    (point) => point !== undefined,
  );
}
