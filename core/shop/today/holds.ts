import type { TodayItem } from '../../../shared/contract/today.ts';
import type { HoldRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { dueGroup, onceDue } from './calendar.ts';
import { about, inWork, type TodayOrder } from './item.ts';

const waitsFor: Record<HoldRow['kind'], string> = {
  customer: 'Waiting for the customer',
  material: 'Waiting for material',
  claim: 'Waiting for the claim',
  other: 'On hold',
};

const remind: Record<HoldRow['kind'], string> = {
  customer: 'Remind the customer',
  material: 'Ask where the material is',
  claim: 'Ask how the claim stands',
  other: 'Look at this hold again',
};

/** The hold itself: waiting, until the day on which somebody is to be reminded. */
function waiting(hold: HoldRow, order: TodayOrder, day: string): TodayItem {
  const { remind_on: remindOn, kind, reason } = hold;
  const due = remindOn === null ? null : onceDue(remindOn, day);
  const fee =
    hold.storage_fee_on !== null && hold.storage_fee_on < day
      ? ` The storage fee counts since ${hold.storage_fee_on}.`
      : '';
  return about(order, {
    kind: 'hold',
    group: due ?? 'waiting',
    what: `${due === null ? waitsFor[kind] : remind[kind]}: ${reason}${fee}`,
    dueOn: remindOn,
    since: dayOf(hold.since),
    room: 'office',
    opens: 'hold',
  });
}

/** Fee and unclaimed dates. A fee that counts already is told with the hold, not every day anew. */
function policyDates(hold: HoldRow, order: TodayOrder, day: string): TodayItem[] {
  const since = dayOf(hold.since);
  const place = { since, room: 'office', opens: 'hold' } as const;
  const items: TodayItem[] = [];
  const { storage_fee_on: feeOn, abandoned_on: abandonedOn } = hold;
  const fee = feeOn === null ? null : dueGroup(feeOn, day);
  if (fee === 'today' || fee === 'soon') {
    const what = "The storage fee begins: tell the customer first, as the shop's terms say.";
    items.push(about(order, { kind: 'storage-fee', group: fee, what, dueOn: feeOn, ...place }));
  }
  const unclaimed = abandonedOn === null ? null : dueGroup(abandonedOn, day);
  if (unclaimed !== null) {
    const what =
      "Counts as unclaimed: decide what becomes of the bow. The shop's terms and local law say what is allowed.";
    items.push(
      about(order, { kind: 'unclaimed', group: unclaimed, what, dueOn: abandonedOn, ...place }),
    );
  }
  return items;
}

/** An open hold: for whom it waits, when to remind them, and what its dates ask for. */
export function openHold(hold: HoldRow, order: TodayOrder, day: string): TodayItem[] {
  if (hold.released_at !== null || !inWork(order)) return [];
  return [waiting(hold, order, day), ...policyDates(hold, order, day)];
}
