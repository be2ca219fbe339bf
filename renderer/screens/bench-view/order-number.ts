/** The order number in a scan, or null where it is something else: `26-0147`. */
export function orderNumberIn(text: string): string | null {
  const number = text.trim();
  return /^\d{2}-\d{4,6}$/.test(number) ? number : null;
}
