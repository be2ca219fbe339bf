import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import type { PlanBowInput, PlanStationInput } from '../../../shared/plan-input.ts';
import type { PlanGap } from '../../../shared/plan-record.ts';
import type { GeometryStationRow } from '../../storage/tables.ts';
import { typicalStations, typicalThicknessIn } from './typical.ts';

type Kind = PlanBowInput['kind'];

export interface StartStations {
  upper: PlanStationInput[];
  lower: PlanStationInput[];
  surface: PlanBowInput['surface'];
  gaps: PlanGap[];
}

const fewest = 3;

const gap = (field: string, sentence: string): PlanGap => ({ field, sentence, fix: 'geometry' });

/** Thickness at a place from the stations where it was measured; of the kind where none was. */
function thicknessAt(kind: Kind, lengthIn: number, known: readonly GeometryStationRow[]) {
  return (fromFadeIn: number): number => {
    const [first, last] = [known[0], known.at(-1)];
    if (first === undefined || last === undefined) {
      return typicalThicknessIn(kind, fromFadeIn, lengthIn);
    }
    const after = known.find((one) => one.from_fade_in >= fromFadeIn) ?? last;
    const before = known.filter((one) => one.from_fade_in <= fromFadeIn).at(-1) ?? first;
    const [a, b] = [before.thickness_in ?? 0, after.thickness_in ?? 0];
    const span = after.from_fade_in - before.from_fade_in;
    return span > 0 ? a + ((b - a) * (fromFadeIn - before.from_fade_in)) / span : a;
  };
}

function limbStations(kind: Kind, limb: Limb, lengthIn: number, rows: GeometryStationRow[]) {
  const gaps: PlanGap[] = [];
  const field = `bow.${limb}.stations`;
  const inside = rows.filter((row) => row.from_fade_in <= lengthIn);
  const known = inside.filter((row) => row.thickness_in !== null);
  if (known.length < inside.length) {
    const at = inside.find((row) => row.thickness_in === null)?.from_fade_in ?? 0;
    const from = known.length > 0 ? 'the stations beside it' : `a usual ${kind}`;
    const where = `${decimal(at, 2)} in from the fade of the ${limb} limb`;
    gaps.push(gap(field, `Thickness not measured ${where}: taken from ${from}.`));
  }
  const thickness = thicknessAt(kind, lengthIn, known);
  const stations = inside.map((row) => ({
    fromFadeIn: row.from_fade_in,
    bellyWidthIn: row.width_in,
    backWidthIn: row.width_in,
    thicknessIn: row.thickness_in ?? thickness(row.from_fade_in),
  }));
  return { stations, gaps };
}

/**
 * Stations of both limbs from one measurement. A limb that nobody measured gets those of the
 * other, and where neither was, a straight taper of the kind; each is a gap.
 * @param lengthsIn fade to nock, inches
 */
export function startStations(
  kind: Kind,
  lengthsIn: Record<Limb, number>,
  rows: readonly GeometryStationRow[],
): StartStations {
  const of = (limb: Limb) =>
    limbStations(
      kind,
      limb,
      lengthsIn[limb],
      rows.filter((row) => row.limb === limb).toSorted((a, b) => a.from_fade_in - b.from_fade_in),
    );
  const found = { upper: of('upper'), lower: of('lower') };
  const gaps = [...found.upper.gaps, ...found.lower.gaps];
  const measured = limbs.filter((limb) => found[limb].stations.length >= fewest);
  const taken = (limb: Limb): PlanStationInput[] => {
    if (measured.includes(limb)) return found[limb].stations;
    const [other] = measured;
    const from = other === undefined ? `those of a usual ${kind}` : `those of the ${other} limb`;
    gaps.push(gap(`bow.${limb}.stations`, `The ${limb} limb is not measured: sizes are ${from}.`));
    const given = other === undefined ? [] : found[other].stations;
    const fitting = given.filter(({ fromFadeIn }) => fromFadeIn <= lengthsIn[limb]);
    return fitting.length >= fewest ? fitting : typicalStations(kind, lengthsIn[limb]);
  };
  const overFinish = rows.some((row) => row.surface === 'over-finish');
  const both = { upper: taken('upper'), lower: taken('lower') };
  if (overFinish) {
    gaps.push(
      gap(
        'bow.surface',
        'Measured over old finish: thickness counts it in, and nothing is thinned until the limbs are measured bare.',
      ),
    );
  }
  return { ...both, surface: overFinish ? 'over-finish' : 'bare', gaps };
}
