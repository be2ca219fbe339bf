import type { TodayItem } from '../../../shared/contract/today.ts';
import type { Room } from '../../../shared/stages.ts';

export interface TodayFilter {
  room: Room | 'all';
  /** Id of the person whose own tasks are shown. */
  person: string | 'all';
}

export const everything: TodayFilter = { room: 'all', person: 'all' };

export function hides(filter: TodayFilter): boolean {
  return filter.room !== 'all' || filter.person !== 'all';
}

export function fits(item: TodayItem, { room, person }: TodayFilter): boolean {
  return (
    (room === 'all' || item.forRoom === room) && (person === 'all' || item.forPersonId === person)
  );
}
