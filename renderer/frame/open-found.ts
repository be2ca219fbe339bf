import { notifications } from '@mantine/notifications';
import { navigate } from 'wouter/use-browser-location';
import type { Found } from '../../shared/contract/find.ts';
import { api } from '../api/client.ts';
import { sentenceOf } from '../api/errors.ts';

export function pathOf(found: Found): string {
  // A scanned label of the stores means that something is taken from there.
  if (found.kind === 'shelf') return `/stores/${found.id}?do=issue`;
  if (found.kind === 'lot') return `/stores/lot/${found.id}?do=issue`;
  const folders = {
    order: 'orders',
    customer: 'customers',
    bow: 'bows',
    consumable: 'stores',
  };
  return `/${folders[found.kind]}/${found.id}`;
}

/** The one thing a text certainly means: an order of that very number, or the only result. */
export function certainly(text: string, results: readonly Found[]): Found | undefined {
  const exact = results.find((found) => found.kind === 'order' && found.title === text.trim());
  return exact ?? (results.length === 1 ? results[0] : undefined);
}

/** The one thing that was scanned or typed with Enter; says so when nothing or too much fits. */
export async function theOneFound(text: string): Promise<Found | undefined> {
  try {
    const results = await api.find({ text });
    const found = certainly(text, results);
    if (found !== undefined) return found;
    notifications.show({
      title: text,
      message:
        results.length === 0
          ? 'No order, customer, bow, shelf or lot has this number.'
          : 'More than one thing fits. Choose it in the command box.',
      color: 'ochre',
    });
  } catch (error) {
    notifications.show({ title: text, message: sentenceOf(error), color: 'brick' });
  }
  return undefined;
}

/** Opens what was scanned or typed with Enter; false where it could not. */
export async function openFound(text: string): Promise<boolean> {
  const found = await theOneFound(text);
  if (found !== undefined) navigate(pathOf(found));
  return found !== undefined;
}
