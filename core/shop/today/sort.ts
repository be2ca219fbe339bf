import { type TodayItem, todayGroups, todayKinds } from '../../../shared/contract/today.ts';

const rank = new Map(todayKinds.map((kind, i) => [kind, i]));

/** Within a group: what waits by how long, everything else by its day, equal days worst first. */
function compare(a: TodayItem, b: TodayItem): number {
  const group = todayGroups.indexOf(a.group) - todayGroups.indexOf(b.group);
  if (group !== 0) return group;
  const day = (item: TodayItem) =>
    (a.group === 'waiting' ? item.since : (item.dueOn ?? null)) ?? '9999-12-31';
  // What is to be done today has no order of days: the worst comes first.
  const byDay = a.group === 'today' ? 0 : day(a).localeCompare(day(b));
  const byKind = (rank.get(a.kind) ?? 0) - (rank.get(b.kind) ?? 0);
  return (
    byDay ||
    byKind ||
    day(a).localeCompare(day(b)) ||
    (a.number ?? '').localeCompare(b.number ?? '')
  );
}

export function sorted(items: readonly TodayItem[]): TodayItem[] {
  return items.toSorted(compare);
}
