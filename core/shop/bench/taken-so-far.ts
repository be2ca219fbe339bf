import type { Limb } from '../../../shared/bows.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { BowResponse } from '../../limb/index.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../storage/tables.ts';

/** A cut far out takes nothing nearer the fade, part of the limb's length. */
export const farOutFromPart = 0.35;

export type PerFace = { back: number; belly: number };

const samePlace = (a: number, b: number) => Math.abs(a - b) < 1e-6;

/** Width at a place after a removal, inches: as measured, else as it was meant. */
export function widthAfter(cut: RemovalCutRow, presentIn: number): number {
  const { width_after_in: after, done_left_in: left, done_right_in: right } = cut;
  return after ?? (cut.width_before_in ?? presentIn) - (left ?? 0) - (right ?? 0);
}

/** The place of a response that a stored cut belongs to. */
export const cutAt = (cuts: readonly RemovalCutRow[], limb: Limb, fromFadeIn: number) =>
  cuts.find((cut) => cut.limb === limb && samePlace(cut.from_fade_in, fromFadeIn));

/** Off a place between those of an earlier plan, inches: evenly from one to the next. */
function offBetween(cuts: readonly RemovalCutRow[], limb: Limb, fromFadeIn: number): number {
  const here = cuts
    .filter((cut) => cut.limb === limb)
    .sort((a, b) => a.from_fade_in - b.from_fade_in);
  const next = here.findIndex((cut) => cut.from_fade_in > fromFadeIn);
  const [inner, outer] = [here[next - 1], here[next]];
  if (inner === undefined || outer === undefined) return 0;
  const off = (cut: RemovalCutRow) => (cut.width_before_in ?? 0) - widthAfter(cut, 0);
  const part = (fromFadeIn - inner.from_fade_in) / (outer.from_fade_in - inner.from_fade_in);
  return off(inner) + part * (off(outer) - off(inner));
}

/** Widths at the places of a plan after removals, inches, oldest removal first. */
export function presentWidths(
  response: BowResponse,
  removals: readonly RemovalRow[],
  cuts: readonly RemovalCutRow[],
): Record<Limb, number[]> {
  const cutsOf = Map.groupBy(cuts, (cut) => cut.removal_id);
  const widths = (limb: Limb) =>
    response[limb].stations.map(({ fromFadeIn, widthIn }) =>
      removals.reduce((presentIn, { id }) => {
        const here = cutsOf.get(id) ?? [];
        const cut = cutAt(here, limb, fromFadeIn);
        return cut === undefined
          ? presentIn - offBetween(here, limb, fromFadeIn)
          : widthAfter(cut, presentIn);
      }, widthIn),
    );
  return { upper: widths('upper'), lower: widths('lower') };
}

/** Full cut off one side by all of these removals, inches. */
export function narrowed(
  removals: readonly RemovalRow[],
  cuts: readonly RemovalCutRow[],
  limb: Limb,
) {
  const sides = removals.map(({ id }) => {
    const here = cuts.filter((cut) => cut.removal_id === id && cut.limb === limb);
    return Math.max(
      0,
      ...here.map(({ done_left_in, done_right_in }) => (done_left_in ?? 0) + (done_right_in ?? 0)),
    );
  });
  // A tip that tracks gets more off one side, the same in total.
  return sides.reduce((sum, one) => sum + one / 2, 0);
}

/** Nothing off here, or the place lies past the inner part of the limb. */
export function isUncutInside(cut: RemovalCutRow, { bow }: PlanInput): boolean {
  const off = (cut.done_left_in ?? 0) + (cut.done_right_in ?? 0);
  return off === 0 || cut.from_fade_in > farOutFromPart * bow[cut.limb].lengthIn;
}

/** Off each face by all of these removals, thousandths: as measured, else as it was meant. */
export function thinned(
  removals: readonly RemovalRow[],
  faces: readonly RemovalFaceRow[],
  limb: Limb,
) {
  const ids = new Set(removals.map(({ id }) => id));
  const off = (face: 'back' | 'belly') =>
    faces
      .filter((row) => ids.has(row.removal_id) && row.limb === limb && row.face === face)
      .reduce((sum, row) => sum + (row.measured_thou ?? row.done_thou ?? row.planned_thou), 0);
  return { back: off('back'), belly: off('belly') };
}
