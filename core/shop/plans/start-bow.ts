import { isGlass } from '../../../shared/bow-checks.ts';
import type { Limb } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import type { PlanBowInput, PlanFaceInput } from '../../../shared/plan-input.ts';
import type { PlanGap } from '../../../shared/plan-record.ts';
import type { PlanFix } from '../../../shared/weight-plan.ts';
import type { BowRow, GeometryStationRow, LimbSetRow } from '../../storage/tables.ts';
import { coreGpaOf, glassGpa, unknownCoreGpa } from './core-moduli.ts';
import { startStations } from './start-stations.ts';
import { typicalEdgeRadiusIn, typicalHookPart, typicalOf, typicalOffsetIn } from './typical.ts';

export interface BowRecords {
  bow: BowRow;
  limbSet: LimbSetRow | null;
  stations: readonly GeometryStationRow[];
  /** As it was braced last, inches; null where nobody noted it. */
  braceIn: number | null;
}

/**
 * What widens the forecast when it is guessed. Riser, pad, edges and moduli move a modelled drop by
 * less than a twentieth of itself, because only ratios count.
 */
const ofSection = /stations|surface|glassNowIn|facing|lengthIn|recurveIn|reflexIn/u;

/** Collects what is missing while typical values are taken. */
class Gaps {
  readonly list: PlanGap[] = [];

  take(value: number | null, typical: number, field: string, what: string, fix: PlanFix = 'bow') {
    if (value !== null) return value;
    this.add(field, `${what} not known: ${decimal(typical, 4)} taken as usual.`, fix);
    return typical;
  }

  add(field: string, sentence: string, fix: PlanFix = 'bow'): void {
    this.list.push({ field, sentence, fix });
  }
}

function faceOf({ bow }: BowRecords, side: 'back' | 'belly', gaps: Gaps): PlanFaceInput {
  const facing = bow[`${side}_facing`];
  const made = bow[`${side}_glass_made_in`];
  const now = bow[`${side}_glass_now_in`];
  const field = `bow.${side}.glassNowIn`;
  if (facing === 'unknown') {
    gaps.add(`bow.${side}.facing`, `Nobody knows the facing of the ${side}: it is not thinned.`);
  }
  const bare = facing === 'wood' || facing === 'bamboo' || bow.construction === 'all-wood';
  if (bare) return { facing, glassNowIn: 0, glassMadeIn: null };
  const { glassIn } = typicalOf[bow.kind];
  const what = isGlass(facing) ? `Glass of the ${side} now` : `Thickness of the ${side} facing`;
  if (now === null && made !== null) {
    gaps.add(field, `${what} not known: ${decimal(made, 4)} in as made is taken.`);
    return { facing, glassNowIn: made, glassMadeIn: made };
  }
  return { facing, glassNowIn: gaps.take(now, glassIn, field, what), glassMadeIn: made };
}

/** Throat to fade and fade to nock of one limb. Those of a limb set are never the bow's own. */
function lengthsOf(records: BowRecords, limb: Limb, gaps: Gaps) {
  const { bow, limbSet, stations } = records;
  const typical = typicalOf[bow.kind];
  const own = limbSet === null;
  const riser = limbSet?.riser_length_in ?? null;
  const fadeIn = gaps.take(
    own ? bow[`${limb}_fade_in`] : riser === null ? null : riser / 2,
    typical.fadeIn,
    `bow.${limb}.fadeIn`,
    `Throat to fade of the ${limb} limb`,
    own ? 'bow' : 'limb-set',
  );
  const farthest = stations
    .filter((station) => station.limb === limb)
    .reduce((most, station) => Math.max(most, station.from_fade_in), 0);
  const amo = own ? bow.amo_length_in : (limbSet.amo_length_in ?? null);
  const byAmo = amo === null ? typical.limbIn : amo / 2 - fadeIn;
  const lengthIn = gaps.take(
    own ? bow[`${limb}_limb_in`] : null,
    Math.max(byAmo, farthest, 8),
    `bow.${limb}.lengthIn`,
    `Fade to nock of the ${limb} limb`,
  );
  return { fadeIn, lengthIn: Math.max(lengthIn, farthest) };
}

function padDegOf({ bow, limbSet }: BowRecords, gaps: Gaps): number {
  const given = limbSet === null ? bow.limb_pad_deg : (limbSet.riser_pad_deg ?? bow.limb_pad_deg);
  return gaps.take(
    given,
    0,
    'bow.upper.padDeg',
    'Pad angle',
    limbSet === null ? 'bow' : 'limb-set',
  );
}

/** How the unstrung limb lies. Nobody measures a reflex: its depth is that of a usual bow. */
function unstrungOf({ bow }: BowRecords, gaps: Gaps) {
  const typical = typicalOf[bow.kind];
  const reflexIn = bow.profile === 'straight' ? 0 : typical.reflexIn;
  const hooked = bow.profile === 'recurve' || (bow.profile === 'unknown' && bow.kind === 'recurve');
  if (bow.profile === 'unknown') {
    gaps.add('bow.reflexIn', `Profile not known: that of a usual ${bow.kind} is taken.`);
  }
  if (!hooked && (bow.recurve_depth_in ?? 0) === 0) return { reflexIn, recurveIn: 0 };
  const depth = typicalOf.recurve.recurveIn;
  const recurveIn = gaps.take(bow.recurve_depth_in, depth, 'bow.recurveIn', 'Recurve depth');
  return { reflexIn, recurveIn };
}

function coreOf({ core_wood }: BowRow, gaps: Gaps): number {
  const gpa = coreGpaOf(core_wood);
  if (gpa !== null) return gpa;
  const what =
    core_wood.trim() === ''
      ? 'Core wood not known'
      : `No stiffness is published for "${core_wood}"`;
  gaps.add('bow.coreGpa', `${what}: ${unknownCoreGpa} GPa taken as usual.`.slice(0, 300));
  return unknownCoreGpa;
}

function braceOf({ bow, braceIn }: BowRecords, gaps: Gaps): number {
  const { brace_low_in: low, brace_high_in: high } = bow;
  const made = low !== null && high !== null ? (low + high) / 2 : (low ?? high);
  const typical = typicalOf[bow.kind].braceIn;
  return gaps.take(braceIn ?? made, typical, 'bow.braceIn', 'Brace height', 'weighings');
}

/** The bow of a plan from its records; everything missing is a typical value and a gap. */
export function startBow(records: BowRecords): { bow: PlanBowInput; gaps: PlanGap[] } {
  const { bow } = records;
  const gaps = new Gaps();
  const faces = { back: faceOf(records, 'back', gaps), belly: faceOf(records, 'belly', gaps) };
  const upper = lengthsOf(records, 'upper', gaps);
  const lower = lengthsOf(records, 'lower', gaps);
  const lengthsIn = { upper: upper.lengthIn, lower: lower.lengthIn };
  const stations = startStations(bow.kind, lengthsIn, records.stations);
  gaps.list.push(...stations.gaps);
  const offset = bow.throat_to_fade_in;
  const fadeOffsetIn = gaps.take(
    offset,
    typicalOffsetIn,
    'bow.upper.fadeOffsetIn',
    'Throat to fade line',
  );
  const riser = { fadeOffsetIn, padDeg: padDegOf(records, gaps) };
  const input: PlanBowInput = {
    kind: bow.kind,
    construction: bow.construction,
    ...faces,
    upper: { ...upper, ...riser, stations: stations.upper },
    lower: { ...lower, ...riser, stations: stations.lower },
    ...unstrungOf(records, gaps),
    recurveFromPart: typicalHookPart,
    braceIn: braceOf(records, gaps),
    edgeRadiusIn: gaps.take(
      bow.edge_radius_in,
      typicalEdgeRadiusIn,
      'bow.edgeRadiusIn',
      'Edge radius',
    ),
    maxSafeDrawIn: bow.max_safe_draw_in,
    coreGpa: coreOf(bow, gaps),
    glassGpa,
    section: gaps.list.some(({ field }) => ofSection.test(field)) ? 'unknown' : 'measured',
    surface: stations.surface,
  };
  if (bow.max_safe_draw_in === null) {
    gaps.add('bow.maxSafeDrawIn', 'Nobody knows how far this bow may be drawn: ask its maker.');
  }
  return { bow: input, gaps: gaps.list };
}
