import type { LifeEvent } from '../../../shared/contract/bow-life.ts';
import { dayOf } from '../day.ts';

/** Names of what a bow's records point to, by id. */
export interface LifeNames {
  people: ReadonlyMap<string, string>;
  orders: ReadonlyMap<string, string>;
  limbSets: ReadonlyMap<string, string>;
}

interface EventParts {
  id: string;
  at: string;
  kind: LifeEvent['kind'];
  title: string;
  text?: string;
  personName: string;
  order: { id: string; number: string } | null;
  struckReason?: string | null;
}

/** Titles are single lines; what they are made of may have been typed in several. */
const oneLine = (words: string) => words.replaceAll(/\p{Cc}+/gu, ' ').slice(0, 400);

export function lifeEvent(parts: EventParts): LifeEvent {
  return {
    id: parts.id,
    at: parts.at,
    on: dayOf(parts.at),
    kind: parts.kind,
    title: oneLine(parts.title),
    text: (parts.text ?? '').slice(0, 4000),
    personName: parts.personName,
    orderId: parts.order?.id ?? null,
    orderNumber: parts.order?.number ?? null,
    struckReason: parts.struckReason ?? null,
  };
}

/** What is known, in one line; empty parts are left out. */
export const joined = (parts: readonly string[]): string =>
  parts.filter((part) => part !== '').join(', ');
