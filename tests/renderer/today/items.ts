import type { TodayItem } from '../../../shared/contract/today.ts';

export const itemWith = (change: Partial<TodayItem> = {}): TodayItem => ({
  kind: 'promised',
  group: 'today',
  orderId: 'order-1',
  number: '26-0147',
  who: 'Nora Hale',
  what: 'Promised; it stands in "Cure".',
  dueOn: null,
  since: null,
  forRoom: 'finish room',
  forPersonId: null,
  forPersonName: null,
  taskId: null,
  taskRowVersion: null,
  consumableId: null,
  opens: null,
  ...change,
});
