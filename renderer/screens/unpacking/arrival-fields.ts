import type { ArrivalFields, ArrivalRecord } from '../../../shared/contract/arrival.ts';
import { omit } from '../../parts/omit.ts';

/** The table before anything was written: the box is opened today. */
export function blankArrival(today: string): ArrivalFields {
  return {
    openedOn: today,
    cameBy: '',
    packaging: '',
    packagingKept: false,
    packagingDamaged: false,
    condition: '',
    nothingCameAlong: false,
    restingSince: null,
    lookedOver: false,
    strung: 'not-yet',
    notStrungBecause: '',
    alignment: '',
    braceIn: null,
    tillerIn: null,
    stringTrack: '',
    note: '',
  };
}

/** What is written of the table, as the fields of a form. */
export function arrivalFieldsOf(record: ArrivalRecord | null, today: string): ArrivalFields {
  if (record === null) return blankArrival(today);
  return omit(record, 'id', 'rowVersion', 'personName', 'completedAt', 'completedBy');
}

/** Whether anything typed says something else than what is written. */
export function isUnsaved(stored: ArrivalFields, typed: Partial<ArrivalFields>): boolean {
  return Object.entries(typed).some(
    ([key, value]) => !Object.is(stored[key as keyof ArrivalFields], value),
  );
}

/**
 * Fields that somebody else wrote while they were being typed here: what is written now is neither
 * what stood there when the typing began nor what is typed.
 */
export function clashesOf(
  base: ArrivalFields,
  stored: ArrivalFields,
  typed: Partial<ArrivalFields>,
): (keyof ArrivalFields)[] {
  const keys = Object.keys(typed) as (keyof ArrivalFields)[];
  return keys.filter(
    (key) => !Object.is(stored[key], base[key]) && !Object.is(stored[key], typed[key]),
  );
}

/** A field's content as it is read back to somebody. */
export function writtenText(value: ArrivalFields[keyof ArrivalFields]): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === null || value === '' ? 'nothing' : String(value);
}

export const fieldLabels: Record<keyof ArrivalFields, string> = {
  openedOn: 'Box opened on',
  cameBy: 'Came by',
  packaging: 'Packaging',
  packagingKept: 'Packaging is kept',
  packagingDamaged: 'Packaging is damaged',
  condition: 'Condition',
  nothingCameAlong: 'Nothing came along',
  restingSince: 'Out of the box since',
  lookedOver: 'Looked over',
  strung: 'Strung',
  notStrungBecause: 'Not strung because',
  alignment: 'Alignment',
  braceIn: 'Brace height',
  tillerIn: 'Tiller',
  stringTrack: 'String track',
  note: 'Note',
};

/** Reasons why a bow is not strung that come up again and again. */
export function usualReasons(hasStop: boolean): string[] {
  return [
    ...(hasStop ? ['a stop finding is open'] : []),
    'limbs only, no riser here to put them on',
    'no string that fits',
    'goes home unworked',
  ];
}

/** Longest word for one thing, and how many go into one list at a time, as the contract takes them. */
const longestThing = 200;
const mostThings = 40;

/** Things typed one after the other, with commas or on lines of their own. */
export function thingsFrom(typed: string): string[] {
  return typed
    .split(/[,\n]/)
    .map((thing) =>
      thing
        .replaceAll(/\p{Cc}+/gu, ' ')
        .trim()
        .slice(0, longestThing),
    )
    .filter((thing) => thing !== '')
    .slice(0, mostThings);
}
