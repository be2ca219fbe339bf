import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { type Room, roomOf, serviceLabels } from '../../../shared/stages.ts';
import { daysUntil } from '../../parts/days.ts';

export const dueChoices = ['any', 'late', 'week', 'none'] as const;
export type DueChoice = (typeof dueChoices)[number];

export interface BoardFilter {
  text: string;
  room: Room | 'all';
  due: DueChoice;
  onHold: boolean;
  closed: boolean;
}

export const everything: BoardFilter = {
  text: '',
  room: 'all',
  due: 'any',
  onHold: false,
  closed: false,
};

/** True while some cards may be hidden by the filter. */
export function hides(filter: BoardFilter): boolean {
  return filter.text !== '' || filter.room !== 'all' || filter.due !== 'any' || filter.onHold;
}

function fitsDue(card: OrderCard, due: DueChoice): boolean {
  if (due === 'any') return true;
  if (card.promisedOn === null) return due === 'none';
  const days = daysUntil(card.promisedOn);
  if (due === 'late') return days < 0;
  return due === 'week' && days <= 7;
}

function fitsText(card: OrderCard, text: string): boolean {
  const services = card.services.map((service) => serviceLabels[service]).join(' ');
  const all = `${card.number} ${card.customerName} ${card.bowLine} ${services}`.toLowerCase();
  return text
    .toLowerCase()
    .split(/\s+/)
    .every((word) => all.includes(word));
}

export function fits(card: OrderCard, filter: BoardFilter): boolean {
  return (
    (filter.room === 'all' || roomOf[card.stage] === filter.room) &&
    (!filter.onHold || card.hold !== null) &&
    fitsDue(card, filter.due) &&
    fitsText(card, filter.text.trim())
  );
}
