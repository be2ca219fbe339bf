import type { LastGrit } from '../../../shared/contract/finish.ts';
import { type BowSection, bowSectionLabels } from '../../../shared/finish.ts';
import { type Grit, gritText, gritWithSize, type SizedGrit } from '../../../shared/grit.ts';
import { gritTables } from '../../finish/abrasive-tables.ts';
import { type Abrasive, abrasive } from '../../finish/grit.ts';
import { lastGritTroubles, sequenceTroubles } from '../../finish/grit-sequence.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import type { SandingRow } from '../../storage/tables.ts';

/** With the size of its grain and the print the size was read from. */
export function sizedGritOf(grit: Grit): SizedGrit {
  const { micrometres, table } = abrasive(grit);
  const source = gritTables.find((each) => each.id === table && each.scale === grit.scale)?.source;
  return { grit: grit.grit, scale: grit.scale, micrometres, source: source ?? '' };
}

export const gritOfRow = (row: Pick<SandingRow, 'grit_json'>): Grit =>
  JSON.parse(row.grit_json) as Grit;

/** The grits of one part in the order they were used; the same one again is no new step. */
function stepsOf(rows: readonly SandingRow[]): Abrasive[] {
  const all = rows.map((row) => abrasive(gritOfRow(row)));
  return all.filter((each, index) => {
    const before = all[index - 1];
    return before === undefined || before.grit !== each.grit || before.scale !== each.scale;
  });
}

function asked(sheet: FinishSheet | null, row: SandingRow, last: Abrasive): string[] {
  const wanted = sheet?.lastGrit[row.substrate] ?? null;
  if (wanted === null) return lastGritTroubles(row.substrate, last);
  return abrasive(wanted).micrometres === last.micrometres
    ? []
    : [`The finish's sheet asks for ${gritText(wanted)} last; this was ${gritWithSize(last)}.`];
}

function lastOf(rows: readonly SandingRow[], sheet: FinishSheet | null): LastGrit[] {
  const row = rows.at(-1);
  const steps = stepsOf(rows);
  const last = steps.at(-1);
  if (row === undefined || last === undefined) return [];
  const isLast = row.is_last === 1;
  return [
    {
      section: row.section as BowSection,
      substrate: row.substrate,
      grit: sizedGritOf(last),
      isLast,
      advice: [
        ...sequenceTroubles(steps),
        ...(isLast ? asked(sheet, row, last) : []),
        ...(row.wiped === 0
          ? [`Not wiped after ${gritText(last)}: wipe it before what comes next.`]
          : []),
      ],
    },
  ];
}

/**
 * Where sanding stands on every part and face of a bow.
 * @param sandings oldest first; the struck-out ones count for nothing
 * @param sheet of the chosen finish, whose own last grit goes before the usual one
 */
export function lastGritsOf(
  sandings: readonly SandingRow[],
  sheet: FinishSheet | null,
): LastGrit[] {
  const standing = sandings.filter((row) => row.struck_reason === null);
  const parts = Map.groupBy(standing, (row) => `${row.section} ${row.substrate}`);
  return [...parts.values()].flatMap((rows) => lastOf(rows, sheet));
}

const limbs: readonly BowSection[] = ['upper-limb', 'lower-limb'];

/**
 * Which parts still want their last grit: both limbs, and whatever else was begun. One sentence,
 * or null where all have it; `none` where nothing was sanded on record.
 */
export function lastGritTrouble(sandings: readonly SandingRow[]): string | null | 'none' {
  const grits = lastGritsOf(sandings, null);
  if (grits.length === 0) return 'none';
  const open = grits.filter((each) => !each.isLast).map((each) => each.section);
  const unsanded = limbs.filter((limb) => grits.every((each) => each.section !== limb));
  const missing = [...new Set([...unsanded, ...open])];
  if (missing.length === 0) return null;
  return `Last grit not recorded: ${missing.map((each) => bowSectionLabels[each]).join(', ')}.`;
}
