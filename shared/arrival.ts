import { z } from './zod.ts';

/** Whether the bow was strung at the unpacking table, and where it was not, somebody says why. */
export const strungStates = ['not-yet', 'strung', 'not-strung'] as const;
export const strungState = z.enum(strungStates);
export type StrungState = z.infer<typeof strungState>;

/** What usually comes along with a bow, to be listed with one tap. */
export const usualBelongings = [
  'String',
  'Quiver',
  'Silencers',
  'Rest',
  'Sock',
  'Stringer',
] as const;

/** What is looked for before a bow is strung for the first time. */
export const lookedFor = [
  'cracks',
  'delamination',
  'raised or crazed glass',
  'run-out',
  'lifted overlays',
  'worn string grooves',
  'twist',
] as const;

/** A bow out of a cold or hot box rests this long before its first stringing: common practice. */
export const restHours = 2;
const hourMs = 60 * 60 * 1000;

/** Instant from which the bow has rested long enough. */
export function restedFrom(restingSince: string): string {
  return new Date(Date.parse(restingSince) + restHours * hourMs).toISOString();
}

export interface CheckedParts {
  condition: string;
  nothingCameAlong: boolean;
  lookedOver: boolean;
  strung: StrungState;
  notStrungBecause: string;
  alignment: string;
  braceIn: number | null;
  tillerIn: number | null;
  stringTrack: string;
}

const filled = (text: string) => text.trim() !== '';

/** What the stringing still lacks, one sentence each. */
export function strungMissing(parts: CheckedParts): string[] {
  if (parts.strung === 'not-yet') return ['Not noted whether it was strung, or why not.'];
  if (parts.strung === 'not-strung') {
    return filled(parts.notStrungBecause) ? [] : ['No reason given why it was not strung.'];
  }
  return [
    filled(parts.alignment) ? null : 'Alignment not noted.',
    parts.braceIn === null ? 'Brace height not measured.' : null,
    parts.tillerIn === null ? 'Tiller not measured.' : null,
    filled(parts.stringTrack) ? null : 'String track not noted.',
  ].filter((sentence) => sentence !== null);
}

/**
 * What the arrival check still lacks, one sentence each; empty when it can be completed.
 * @param parts what was recorded, or null where the box has not been opened.
 */
export function arrivalMissing(parts: CheckedParts | null, belongings: number): string[] {
  if (parts === null) {
    return [
      'Not noted when the box was opened.',
      'Condition on arrival not noted.',
      ...(belongings > 0 ? [] : ['What came along is not listed.']),
      'Not looked over yet.',
      'Not noted whether it was strung, or why not.',
    ];
  }
  return [
    ...(filled(parts.condition) ? [] : ['Condition on arrival not noted.']),
    ...(belongings > 0 || parts.nothingCameAlong ? [] : ['What came along is not listed.']),
    ...(parts.lookedOver ? [] : ['Not looked over yet.']),
    ...strungMissing(parts),
  ];
}
