/** Why a record does not count, one tap each. */
export const strikeReasons = ['Misread', 'Wrong draw', 'Wrong bow', 'It slipped'] as const;
export type StrikeReason = (typeof strikeReasons)[number];

/** The reason as it is kept; words are free and may be left out. */
export function reasonText(chosen: StrikeReason, words: string): string {
  const more = words.trim();
  return more === '' ? chosen : `${chosen}: ${more}`;
}
