import type { LifeRemoval } from '../../../shared/contract/bow-life.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../storage/tables.ts';
import { removalParts } from '../bench/removal-parts.ts';
import { dayOf } from '../day.ts';

/** A removal that counts, with what it took. */
export interface CountedRemoval {
  row: RemovalRow;
  doneAt: string;
  cuts: readonly RemovalCutRow[];
  faces: readonly RemovalFaceRow[];
}

/** Every removal of a bow, whatever order it was done in, oldest first; struck-out ones too. */
export async function removalRows(
  db: OpenShop['read'],
  bowId: string,
): Promise<{ rows: RemovalRow[]; cuts: RemovalCutRow[]; faces: RemovalFaceRow[] }> {
  const rows = await db
    .selectFrom('removal')
    .selectAll()
    .where('bow_id', '=', bowId)
    .orderBy('planned_at')
    .orderBy('id')
    .execute();
  const { cuts, faces } = await removalParts(db, rows);
  return { rows, cuts, faces };
}

/** Those that were done and still stand. */
export function countedRemovals(all: Awaited<ReturnType<typeof removalRows>>): CountedRemoval[] {
  return all.rows.flatMap((row) => {
    if (row.struck_reason !== null || row.done_at === null) return [];
    return {
      row,
      doneAt: row.done_at,
      cuts: all.cuts.filter(({ removal_id }) => removal_id === row.id),
      faces: all.faces.filter(({ removal_id }) => removal_id === row.id),
    };
  });
}

interface Sides {
  leftIn: number;
  rightIn: number;
}

/**
 * What one cut took off each side, inches: as re-measured where it was, shared between the sides
 * as they were cut, since a calliper over the whole width does not tell them apart.
 */
export function takenOf(cut: RemovalCutRow): Sides {
  const leftIn = cut.done_left_in ?? cut.planned_left_in;
  const rightIn = cut.done_right_in ?? cut.planned_right_in;
  if (cut.width_before_in === null || cut.width_after_in === null) return { leftIn, rightIn };
  const totalIn = cut.width_before_in - cut.width_after_in;
  const cutIn = leftIn + rightIn;
  const leftPart = cutIn > 0 ? leftIn / cutIn : 0.5;
  return { leftIn: totalIn * leftPart, rightIn: totalIn * (1 - leftPart) };
}

/** Off one face, thousandths: measured, else as it was done, else as it was meant. */
export function faceThou(face: RemovalFaceRow): number {
  return face.measured_thou ?? face.done_thou ?? face.planned_thou;
}

const dustless = (value: number) => Number(value.toFixed(6));
const limbRank = { upper: 0, lower: 1 } as const;

function widthsOf(removals: readonly CountedRemoval[]): LifeRemoval['widths'] {
  const cuts = removals.flatMap((removal) => removal.cuts);
  // A station re-measured to another hair is still the same place.
  const places = Map.groupBy(cuts, (cut) => `${cut.limb} ${cut.from_fade_in.toFixed(2)}`);
  return [...places.values()]
    .flatMap((group) => {
      const [first] = group;
      if (first === undefined) return [];
      const taken = group.map(takenOf);
      const leftIn = dustless(taken.reduce((sum, one) => sum + one.leftIn, 0));
      const rightIn = dustless(taken.reduce((sum, one) => sum + one.rightIn, 0));
      const totalIn = dustless(leftIn + rightIn);
      if (totalIn === 0) return [];
      return [{ limb: first.limb, fromFadeIn: first.from_fade_in, leftIn, rightIn, totalIn }];
    })
    .toSorted((a, b) => limbRank[a.limb] - limbRank[b.limb] || a.fromFadeIn - b.fromFadeIn)
    .slice(0, 400);
}

function facesOf(removals: readonly CountedRemoval[]): LifeRemoval['faces'] {
  const faces = removals.flatMap((removal) => removal.faces);
  return [...Map.groupBy(faces, ({ limb, face }) => `${limb} ${face}`).values()]
    .flatMap((group) => {
      const [first] = group;
      const thou = dustless(group.reduce((sum, one) => sum + faceThou(one), 0));
      if (first === undefined || thou === 0) return [];
      const isMeasured = group.every(({ measured_thou }) => measured_thou !== null);
      return [{ limb: first.limb, face: first.face, thou, isMeasured }];
    })
    .toSorted((a, b) => limbRank[a.limb] - limbRank[b.limb] || a.face.localeCompare(b.face));
}

/** Removals by the pair of limbs they were done on; a take-down bow may have several. */
export function byLimbSet(removals: readonly CountedRemoval[]): Map<string, CountedRemoval[]> {
  return Map.groupBy(removals, ({ row }) => row.limb_set_id ?? '');
}

/** Everything taken off a bow in this shop, one entry a pair of limbs. */
export function lifetimeOf(
  removals: readonly CountedRemoval[],
  limbSets: ReadonlyMap<string, string>,
): LifeRemoval[] {
  return [...byLimbSet(removals)].slice(0, 50).map(([setId, group]) => ({
    limbSetName: limbSets.get(setId) ?? null,
    removals: group.length,
    widths: widthsOf(group),
    faces: facesOf(group),
    noted: group
      .filter(({ row }) => row.method === 'noted')
      .slice(0, 200)
      .map(({ row, doneAt }) => ({ on: dayOf(doneAt), words: row.note.slice(0, 4000) })),
  }));
}
