import { type Limb, limbs } from '../../../../shared/bows.ts';
import {
  type GeometryVersion,
  geometry,
  type Station,
} from '../../../../shared/contract/geometry.ts';
import { inputErrors } from '../../../parts/input-schema.ts';

export interface LimbSize {
  widthIn: number | null;
  thicknessIn: number | null;
}

/** One distance from the fades, upper and lower limb side by side; inches. */
export interface StationRow {
  key: number;
  fromFadeIn: number | null;
  upper: LimbSize;
  lower: LimbSize;
}

export type Surface = Station['surface'];
export type SizeField = keyof LimbSize;

const unmeasured: LimbSize = { widthIn: null, thicknessIn: null };
/** Where a limb is measured when nobody has chosen places yet: every four inches (common practice). */
const firstDistances = [2, 6, 10, 14, 18];
const usualStepIn = 4;

const newRow = (key: number, fromFadeIn: number | null): StationRow => ({
  key,
  fromFadeIn,
  upper: unmeasured,
  lower: unmeasured,
});

/** Rows to measure: the places of the version before, so that the two can be compared. */
export function startRows(last: Pick<GeometryVersion, 'stations'> | null): StationRow[] {
  const before = [...new Set(last?.stations.map((station) => station.fromFadeIn) ?? [])];
  const distances = before.length === 0 ? firstDistances : before.toSorted((a, b) => a - b);
  return distances.map((distance, key) => newRow(key, distance));
}

/** One more row, as far from the last as the last is from the one before it. */
export function withRow(rows: readonly StationRow[]): StationRow[] {
  const key = Math.max(-1, ...rows.map((row) => row.key)) + 1;
  const [before, last] = rows.slice(-2).map((row) => row.fromFadeIn);
  const end = last ?? before ?? null;
  if (end === null || Number.isNaN(end)) return [...rows, newRow(key, null)];
  const step = typeof last === 'number' && typeof before === 'number' ? last - before : usualStepIn;
  return [...rows, newRow(key, end + (step > 0 ? step : usualStepIn))];
}

const isMeasured = (size: LimbSize) => size.widthIn !== null || size.thicknessIn !== null;

interface Placed {
  station: Station;
  key: number;
}

/** Stations as they are sent, upper limb first, from fade to tip; rows nobody measured are left out. */
function placed(rows: readonly StationRow[], surface: Surface): Placed[] {
  const inOrder = rows.toSorted(
    (a, b) => (a.fromFadeIn ?? Number.NaN) - (b.fromFadeIn ?? Number.NaN),
  );
  return limbs.flatMap((limb) =>
    inOrder
      .filter((row) => isMeasured(row[limb]))
      .map((row) => ({
        key: row.key,
        station: {
          limb,
          fromFadeIn: row.fromFadeIn ?? Number.NaN,
          widthIn: row[limb].widthIn ?? Number.NaN,
          thicknessIn: row[limb].thicknessIn,
          surface,
        },
      })),
  );
}

export function stationsOf(rows: readonly StationRow[], surface: Surface): Station[] {
  return placed(rows, surface).map(({ station }) => station);
}

/** Name of a field in {@link rowErrors}: `3.fromFadeIn` or `3.upper.widthIn`. */
export const fieldName = (key: number, limb: Limb | null, field: string): string =>
  limb === null ? `${key}.${field}` : `${key}.${limb}.${field}`;

/** Errors by the contract's paths (`stations.4.widthIn`), said of the rows they came from. */
export function rowErrors(
  errors: Readonly<Record<string, string>>,
  rows: readonly StationRow[],
  surface: Surface,
): Record<string, string> {
  const order = placed(rows, surface);
  return Object.fromEntries(
    Object.entries(errors).map(([path, text]) => {
      const [head, index = '', field = 'widthIn'] = path.split('.');
      const from = head === 'stations' ? order[Number(index)] : undefined;
      if (from === undefined || index === '') return [path, text];
      const limb = field === 'fromFadeIn' ? null : from.station.limb;
      return [fieldName(from.key, limb, field), text];
    }),
  );
}

/** What the contract would refuse, by row and field. */
export function stationErrors(
  rows: readonly StationRow[],
  surface: Surface,
): Record<string, string> {
  const stations = stationsOf(rows, surface);
  if (stations.length === 0) return { stations: 'Measure at least three stations of a limb.' };
  const fields = { bowId: 'bow', limbSetId: null, orderId: null, note: '', stations };
  return rowErrors(inputErrors(geometry.record, fields), rows, surface);
}

/** A value one step up or down, on the grid of the step: a rule's 64th or a calliper's thou. */
export function stepped(value: number | null, step: number, direction: 1 | -1): number {
  const from = value === null || Number.isNaN(value) ? 0 : value;
  return Math.max(0, Number(((Math.round(from / step) + direction) * step).toFixed(6)));
}
