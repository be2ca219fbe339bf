import dayjs from 'dayjs';
import type { TodayGroup, TodayItem } from '../../../shared/contract/today.ts';
import { daysUntil, dayText, dueText, fullDay } from '../../parts/days.ts';

export const groupTitles: Record<TodayGroup, string> = {
  late: 'Late',
  today: 'Today',
  waiting: 'Waiting',
  soon: 'This week',
  stores: 'Stores',
  ready: 'Ready to go on',
};

/** `since today`, `1 day`, `12 days`. */
export function forText(since: string): string {
  const days = -daysUntil(since);
  if (days <= 0) return 'since today';
  return days === 1 ? '1 day' : `${days} days`;
}

function waitingText({ since, dueOn }: TodayItem): string {
  const waits = since === null ? '' : forText(since);
  const next = dueOn === null ? '' : `remind ${dayText(dueOn)}`;
  return [waits, next].filter(Boolean).join(', ');
}

function todayText({ since, dueOn }: TodayItem): string {
  if (dueOn !== null && daysUntil(dueOn) > 0) return dueText(dueOn);
  return since === null ? '' : forText(since);
}

function storesText({ kind, dueOn }: TodayItem): string {
  if (dueOn === null) return '';
  return kind === 'expired-lot' ? `expired ${dayText(dueOn)}` : `use by ${dayText(dueOn)}`;
}

/** Since when, or until when, in the words of its group; empty where there is nothing to say. */
export function whenText(item: TodayItem): string {
  switch (item.group) {
    case 'waiting':
      return waitingText(item);
    case 'today':
      return todayText(item);
    case 'stores':
      return storesText(item);
    default:
      return item.dueOn === null ? '' : dueText(item.dueOn);
  }
}

/** Said of a task that is kept and not shown yet; null where the list shows it. */
export function laterText(dueOn: string): string | null {
  if (daysUntil(dueOn) <= 7) return null;
  const shows = dayjs(dueOn).subtract(7, 'day').format('YYYY-MM-DD');
  return `The task is kept. It shows here from ${fullDay(shows)}.`;
}
