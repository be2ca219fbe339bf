import {
  type TodayGroup,
  type TodayItem,
  todayGroups,
  todayKinds,
} from '../../../shared/contract/today.ts';

const rank = new Map(todayKinds.map((kind, i) => [kind, i]));

/** Read worst first: an old parcel must not stand above a promise that is broken. */
const worstFirst: readonly TodayGroup[] = ['late', 'today', 'stores'];

const dayOf = (item: TodayItem) =>
  (item.group === 'waiting' ? item.since : item.dueOn) ?? '9999-12-31';

/** By group; then what is due or of the stores by how bad it is and by its day, all else by its day alone. */
function compare(a: TodayItem, b: TodayItem): number {
  const byGroup = todayGroups.indexOf(a.group) - todayGroups.indexOf(b.group);
  const byKind = (rank.get(a.kind) ?? 0) - (rank.get(b.kind) ?? 0);
  const byDay = dayOf(a).localeCompare(dayOf(b));
  const within = worstFirst.includes(a.group) ? byKind || byDay : byDay || byKind;
  return byGroup || within || (a.number ?? '').localeCompare(b.number ?? '');
}

export function sorted(items: readonly TodayItem[]): TodayItem[] {
  return items.toSorted(compare);
}
