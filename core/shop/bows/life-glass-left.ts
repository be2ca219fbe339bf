import { limbs } from '../../../shared/bows.ts';
import type { GlassLeft } from '../../../shared/contract/bow-life.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { byLimbSet, type CountedRemoval, faceThou } from './life-removed.ts';

type Face = GlassLeft['face'];
type GlassRow = Pick<BowRow, `${Face}_glass_${'made_in' | 'now_in' | 'how'}`>;

/** What the glass of one face is reckoned from. */
interface Basis {
  kind: GlassLeft['basis'];
  thou: number;
  how: GlassLeft['how'];
  /** Instant since when removals come off it; null: all of them do. */
  since: string | null;
}

const thouOf = (inches: number) => Number((inches * 1000).toFixed(4));

/** Instant of the command that wrote the present measured figure of a face. */
async function writtenAt(shop: OpenShop, bowId: string, face: Face): Promise<string | null> {
  const rows = await shop.read
    .selectFrom('command_change')
    .innerJoin('command', 'command.id', 'command_change.command_id')
    .select(['command.at', 'command_change.before_json', 'command_change.after_json'])
    .where('command_change.table_name', '=', 'bow')
    .where('command_change.row_id', '=', bowId)
    .orderBy('command.at', 'desc')
    .orderBy('command_change.seq', 'desc')
    .execute();
  const said = (json: string | null) => {
    const row = json === null ? {} : (JSON.parse(json) as Partial<GlassRow>);
    return `${row[`${face}_glass_now_in`] ?? ''} ${row[`${face}_glass_how`] ?? ''}`;
  };
  return rows.find((row) => said(row.before_json) !== said(row.after_json))?.at ?? null;
}

/** A measured figure goes before the one it was made with; null where neither is known. */
async function basisOf(shop: OpenShop, bow: BowRow, face: Face): Promise<Basis | null> {
  const now = bow[`${face}_glass_now_in`];
  const made = bow[`${face}_glass_made_in`];
  const how = bow[`${face}_glass_how`];
  if (now !== null) {
    return { kind: 'measured', thou: thouOf(now), how, since: await writtenAt(shop, bow.id, face) };
  }
  return made === null ? null : { kind: 'made', thou: thouOf(made), how, since: null };
}

function leftOn(
  limb: GlassLeft['limb'],
  face: Face,
  basis: Basis,
  removals: readonly CountedRemoval[],
): Omit<GlassLeft, 'limbSetName'> {
  const since = removals.filter(({ doneAt }) => basis.since === null || doneAt > basis.since);
  const off = since
    .flatMap(({ faces }) => faces)
    .filter((one) => one.limb === limb && one.face === face)
    .reduce((sum, one) => sum + faceThou(one), 0);
  return {
    limb,
    face,
    leftThou: Number((basis.thou - off).toFixed(4)),
    fromThou: basis.thou,
    basis: basis.kind,
    how: basis.how,
    measuredOn: basis.since === null ? null : dayOf(basis.since),
    offSinceThou: Number(off.toFixed(4)),
    notedSince: since.filter(({ row }) => row.method === 'noted').length,
  };
}

/**
 * Glass left on each face of each limb, thousandths: the latest figure measured minus what came off
 * since; where none was measured, what it was made with minus everything this shop took off.
 */
export async function glassLeftOf(
  shop: OpenShop,
  bowId: string,
  removals: readonly CountedRemoval[],
  limbSets: ReadonlyMap<string, string>,
): Promise<GlassLeft[]> {
  const bow = await shop.read
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', bowId)
    .executeTakeFirstOrThrow();
  const bases = {
    back: await basisOf(shop, bow, 'back'),
    belly: await basisOf(shop, bow, 'belly'),
  };
  const groups = byLimbSet(removals);
  const sets = groups.size === 0 ? [['', []] as const] : [...groups];
  return sets.slice(0, 50).flatMap(([setId, group]) =>
    limbs.flatMap((limb) =>
      (['back', 'belly'] as const).flatMap((face) => {
        const basis = bases[face];
        if (basis === null) return [];
        return { limbSetName: limbSets.get(setId) ?? null, ...leftOn(limb, face, basis, group) };
      }),
    ),
  );
}
