/** Answers as the screens write them. */
export const contactWords = [
  { value: 'any', label: 'Either' },
  { value: 'email', label: 'E-mail' },
  { value: 'phone', label: 'Phone' },
] as const;

export const styleWords = [
  { value: 'split', label: 'Split finger' },
  { value: 'three-under', label: 'Three under' },
  { value: 'unknown', label: 'Not known' },
] as const;

/** The label of one answer. */
export function wordOf(
  words: readonly { readonly value: string; readonly label: string }[],
  value: string,
): string {
  return words.find((word) => word.value === value)?.label ?? value;
}
