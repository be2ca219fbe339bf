import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { BeforeAfterData } from '../../papers/before-after.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../storage/tables.ts';
import { removalParts } from '../bench/removal-parts.ts';

/** Everything that was taken off a bow for one order and is not struck out. */
export interface RemovalRecords {
  removals: RemovalRow[];
  cuts: RemovalCutRow[];
  faces: RemovalFaceRow[];
}

export async function removalRecords(shop: OpenShop, orderId: string): Promise<RemovalRecords> {
  const removals = await shop.read
    .selectFrom('removal')
    .selectAll()
    .where('order_id', '=', orderId)
    .where('struck_reason', 'is', null)
    .where('done_at', 'is not', null)
    .orderBy('done_at')
    .execute();
  const { cuts, faces } = await removalParts(shop.read, removals);
  return { removals, cuts, faces };
}

const limbs = ['upper', 'lower'] as const;
const inches = (value: number) =>
  value < 0.0005 ? 'nothing' : `${decimal(value, 3)}" (${inchFraction(value, 64)}")`;
const thou = (value: number) => (value < 0.05 ? 'nothing' : `${decimal(value)} thou`);

/** Largest sums over all bites at one station; stations within 1/16 in are the same one. */
function widths(cuts: readonly RemovalCutRow[]): { left: number; right: number; total: number } {
  const at = new Map<number, { left: number; right: number }>();
  for (const cut of cuts) {
    const place = Math.round(cut.from_fade_in * 16);
    const sum = at.get(place) ?? { left: 0, right: 0 };
    sum.left += cut.done_left_in ?? 0;
    sum.right += cut.done_right_in ?? 0;
    at.set(place, sum);
  }
  const sums = [...at.values()];
  const most = (of: (sum: { left: number; right: number }) => number) =>
    Math.max(0, ...sums.map(of));
  return {
    left: most(({ left }) => left),
    right: most(({ right }) => right),
    total: most(({ left, right }) => left + right),
  };
}

function thouOff(faces: readonly RemovalFaceRow[], face: RemovalFaceRow['face']): number {
  const rows = faces.filter((row) => row.face === face);
  return rows.reduce((sum, row) => sum + (row.measured_thou ?? row.done_thou ?? 0), 0);
}

/** Per limb what came off each side, both sides and each face; in words where nothing did. */
export function removedLines({
  removals,
  cuts,
  faces,
}: RemovalRecords): Pick<BeforeAfterData, 'removed' | 'removedWords'> {
  const words = removals
    .filter(({ method, note }) => method === 'noted' && note !== '')
    .map(({ note }) => note.replaceAll('\n', ' '));
  if (cuts.length === 0 && faces.length === 0) {
    const nothing = 'Nothing was taken off the limbs to change the draw weight.';
    return { removed: [], removedWords: words.length > 0 ? words : [nothing] };
  }
  const removed = limbs.map((limb) => {
    const { left, right, total } = widths(cuts.filter((cut) => cut.limb === limb));
    const own = faces.filter((face) => face.limb === limb);
    return {
      limb: limb === 'upper' ? 'Upper' : 'Lower',
      cells: [
        inches(left),
        inches(right),
        inches(total),
        thou(thouOff(own, 'belly')),
        thou(thouOff(own, 'back')),
      ],
    };
  });
  return { removed, removedWords: words };
}
