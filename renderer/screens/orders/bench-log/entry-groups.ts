import type { Entry } from '../../../../shared/contract/entries.ts';
import { type EntryItem, entryKinds } from '../../../../shared/entries.ts';
import { finalCheckItems } from '../../../../shared/final-checklist.ts';
import type { Gate } from '../../../../shared/gates.ts';
import type { Stage } from '../../../../shared/stages.ts';

export interface EntryGroup {
  /** Gate the entries stand for. */
  gate: Gate;
  items: readonly EntryItem[];
}

/** Entries by the gate that asks for them, in the order of the full route. */
export const entryGroups: readonly EntryGroup[] = [
  { gate: 'arrived', items: ['arrived-on', 'condition', 'belongings'] },
  { gate: 'agreed', items: ['arrival-check', 'target-feasible'] },
  { gate: 'weight-work', items: ['stations', 'plan-accepted', 'bare-glass'] },
  { gate: 'bite', items: ['removal', 'glass-check', 'tiller-read'] },
  { gate: 'finish', items: ['last-grit', 'finish-system', 'air'] },
  { gate: 'lettering', items: ['lettering-applied', 'lettering-dry'] },
  {
    gate: 'coat',
    items: ['first-clear', 'pot-life', 'lots-in-date', 'recoat-window', 'coat'],
  },
  { gate: 'final-check', items: ['string-and-flex'] },
  {
    gate: 'packed',
    items: [
      'paid-or-terms',
      'findings-told',
      'safe-to-wrap',
      'final-safety',
      'final-looks',
      'belongings-back',
      ...finalCheckItems,
    ],
  },
  { gate: 'shipped', items: ['carrier-limits', 'tracking'] },
  { gate: 'collected', items: ['handed-to'] },
];

const isOffered = (item: EntryItem) => entryKinds[item].retired === null;

/** What is written here by hand; the rest has a screen of its own. */
export const offeredGroups: readonly EntryGroup[] = entryGroups
  .map((group) => ({ ...group, items: group.items.filter(isOffered) }))
  .filter((group) => group.items.length > 0);

const stepStages: Partial<Record<Gate, readonly Stage[]>> = {
  bite: ['weight-work', 'strip-sand'],
  lettering: ['finish'],
  coat: ['finish'],
};

export interface SortedGroups {
  /** What the next gate and the work of this stage need. */
  now: EntryGroup[];
  later: EntryGroup[];
  before: EntryGroup[];
}

/**
 * The groups an order has use for, those needed next first. Groups off the route are left out,
 * unless something was written in them; so is what is written elsewhere now.
 */
export function groupsFor(
  order: { route: readonly Stage[]; stage: Stage; next: Stage | null },
  written: ReadonlySet<EntryItem>,
): SortedGroups {
  const at = order.route.indexOf(order.stage);
  const sorted: SortedGroups = { now: [], later: [], before: [] };
  const shown = entryGroups
    .map(({ gate, items }) => ({
      gate,
      items: items.filter((item) => isOffered(item) || written.has(item)),
    }))
    .filter((group) => group.items.length > 0);
  for (const group of shown) {
    const stages = stepStages[group.gate] ?? [group.gate as Stage];
    const places = stages.map((stage) => order.route.indexOf(stage)).filter((place) => place >= 0);
    if (places.length === 0) {
      if (group.items.some((item) => written.has(item))) sorted.before.push(group);
    } else if (
      group.gate === order.next ||
      (group.gate in stepStages && stages.includes(order.stage))
    ) {
      sorted.now.push(group);
    } else if (Math.max(...places) > at) sorted.later.push(group);
    else sorted.before.push(group);
  }
  return sorted;
}

/** How the log stands, in a few words: what is still to be written now, and what is written. */
export function logState(
  entries: readonly Pick<Entry, 'item' | 'struckReason'>[],
  now: readonly EntryGroup[],
): string {
  const counted = entries.filter(({ struckReason }) => struckReason === null);
  const written = new Set(counted.map(({ item }) => item));
  const open = now
    .flatMap(({ items }) => items)
    .filter((item) => isOffered(item) && !written.has(item)).length;
  const recorded = counted.length === 0 ? 'nothing recorded' : `${counted.length} recorded`;
  return open === 0 ? recorded : `${recorded}, ${open} to record`;
}
