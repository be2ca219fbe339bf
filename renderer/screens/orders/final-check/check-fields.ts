import type { FinalCheckRow } from '../../../../shared/contract/final-check.ts';
import type { ContractInputs } from '../../../../shared/contract/types.ts';

type Check = ContractInputs['finalCheck']['record']['checks'][number];
type Item = Check['item'];

/** What was ticked and typed for one row and is not recorded yet. */
export interface CheckFields {
  outcome: Check['outcome'];
  note: string;
  /** For a safety item that is not in order; null until somebody has chosen. */
  finding: 'stop' | 'watch' | 'none' | null;
  place: string;
}
export type Ticked = Partial<Record<Item, CheckFields>>;

export const ticked = (outcome: Check['outcome']): CheckFields => ({
  outcome,
  note: '',
  finding: null,
  place: '',
});

/** Errors by `item` and part, so that each stands beside its own field. */
export type CheckErrors = Partial<Record<`${Item} ${'note' | 'finding' | 'place'}`, string>>;

export function checkErrors(fields: Ticked, rows: readonly FinalCheckRow[]): CheckErrors {
  const errors: CheckErrors = {};
  for (const { item, safety } of rows) {
    const field = fields[item];
    if (field === undefined || field.outcome === 'ok') continue;
    if (field.note.trim() === '') errors[`${item} note`] = 'Say what is not in order.';
    if (safety && field.finding === null) errors[`${item} finding`] = 'Choose one.';
    const placed = field.finding === 'stop' || field.finding === 'watch';
    if (placed && field.place.trim() === '') errors[`${item} place`] = 'Say where on the bow.';
  }
  return errors;
}

/** Rows that were ticked, in the order of the list, as the command takes them. */
export function checksFrom(fields: Ticked, rows: readonly FinalCheckRow[]): Check[] {
  return rows.flatMap(({ item }): Check[] => {
    const field = fields[item];
    if (field === undefined) return [];
    const { outcome, note, finding, place } = field;
    const writes = outcome === 'not-ok' && (finding === 'stop' || finding === 'watch');
    return [
      { item, outcome, note: note.trim(), finding: writes ? { grade: finding, place } : null },
    ];
  });
}

/** How far the checklist is, in a few words. */
export function standing(rows: readonly FinalCheckRow[]): string {
  const good = rows.filter((row) => row.entry?.outcome === 'ok' && !row.outdated).length;
  const bad = rows.filter((row) => row.entry?.outcome === 'not-ok' && !row.outdated).length;
  const open = rows.length - good - bad;
  if (good + bad === 0) return `${open} to look at`;
  return [
    `${good} of ${rows.length} in order`,
    ...(bad === 0 ? [] : [`${bad} not in order`]),
    ...(open === 0 ? [] : [`${open} to look at`]),
  ].join(', ');
}
