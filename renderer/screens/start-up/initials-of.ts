/** First letters of up to four words: `Nell Varga` gives `NV`. */
export function initialsOf(name: string): string {
  return name
    .trim()
    .split(/\s+/)
    .map((word) => word.slice(0, 1).toUpperCase())
    .join('')
    .slice(0, 4);
}
