import type { MissingItem } from '../../shared/gates.ts';

/** Missing items that are put right in one place, told in one row. */
export interface MissingGroup {
  /** The way leads to the first of them. */
  first: MissingItem;
  items: readonly MissingItem[];
}

/** From this many on they are one row: fewer read better one by one. */
const groupedFrom = 3;

/** What a sentence like `Final check not done: Edges rounded.` begins with; empty where it does not. */
export function leadOf({ sentence }: Pick<MissingItem, 'sentence'>): string {
  const end = sentence.indexOf(': ');
  return end < 0 ? '' : sentence.slice(0, end);
}

/** Several sentences without their common lead, as one. */
export function restOf(items: readonly Pick<MissingItem, 'sentence'>[]): string {
  const rests = items.map(({ sentence }) => sentence.slice(sentence.indexOf(': ') + 2));
  return rests.map((rest) => rest.replace(/\.$/, '')).join('; ');
}

/** Items of one gate and section whose sentences begin alike, as rows in the order they came. */
export function groupsOf(missing: readonly MissingItem[]): MissingGroup[] {
  const alike = Map.groupBy(missing, (item) =>
    leadOf(item) === ''
      ? `${item.gate} ${item.item}`
      : `${item.gate} ${item.section} ${leadOf(item)}`,
  );
  return [...alike.values()].flatMap((items) =>
    items.length >= groupedFrom
      ? items.slice(0, 1).map((first) => ({ first, items }))
      : items.map((item) => ({ first: item, items: [item] })),
  );
}
