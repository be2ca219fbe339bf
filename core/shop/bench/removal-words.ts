import { removalMethodLabels } from '../../../shared/bench.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { RemovalCutRow, RemovalFaceRow } from '../../storage/tables.ts';
import type { StoredRemoval } from './removals.ts';

const limbs = ['upper', 'lower'] as const;

/** `1/64" per side (1/32" in total)`; sides apart where they differ. */
function cutWords(cuts: readonly RemovalCutRow[]): string | null {
  const done = cuts.map((cut) => ({
    at: cut.from_fade_in,
    left: cut.done_left_in ?? cut.planned_left_in,
    right: cut.done_right_in ?? cut.planned_right_in,
  }));
  const cutPlaces = done.filter(({ left, right }) => left + right > 0);
  const [first, last] = [cutPlaces[0], cutPlaces.at(-1)];
  if (first === undefined || last === undefined) return null;
  const most = cutPlaces.reduce((a, b) => (b.left + b.right > a.left + a.right ? b : a));
  const total = `${inchFraction(most.left + most.right, 64)}" in total`;
  const side =
    Math.abs(most.left - most.right) < 1e-6
      ? `${inchFraction(most.left, 64)}" per side`
      : `left ${inchFraction(most.left, 64)}", right ${inchFraction(most.right, 64)}"`;
  return `${side} (${total}), ${decimal(first.at)} to ${decimal(last.at)}" from the fade`;
}

function faceWords(faces: readonly RemovalFaceRow[]): string | null {
  const off = faces
    .map((row) => ({
      face: row.face,
      thou: row.measured_thou ?? row.done_thou ?? row.planned_thou,
    }))
    .filter(({ thou }) => thou > 0);
  return off.length === 0
    ? null
    : off.map(({ face, thou }) => `${face} ${decimal(thou, 2)} thou`).join(', ');
}

/** What came off, per side and in total, limb by limb. */
export function removalWords(removal: StoredRemoval): string {
  const parts = limbs.flatMap((limb) => {
    const cut = cutWords(removal.cuts.filter((row) => row.limb === limb));
    const face = faceWords(removal.faces.filter((row) => row.limb === limb));
    const words = [cut, face].filter((each) => each !== null).join('; ');
    return words === '' ? [] : [`${limb} limb ${words}`];
  });
  const label = removalMethodLabels[removal.method];
  if (parts.length === 0)
    return removal.method === 'noted' ? removal.note.replaceAll(/\s+/g, ' ').slice(0, 600) : label;
  return `${label}: ${parts.join(' / ')}`.slice(0, 600);
}
