import type { TodayItem } from '../../../shared/contract/today.ts';
import type { IncidentRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { daysBetween, dueGroup } from './calendar.ts';
import { about, type TodayOrder } from './item.ts';

/** A claim is to be filed when no more days than these are left; shop practice. */
export const claimWarningDays = 14;

const labels: Record<IncidentRow['kind'], string> = {
  'damaged-here': 'Damaged here',
  'damaged-in-transit': 'Damaged in transit',
  'lost-in-transit': 'Lost in transit',
};

function tellOwner(incident: IncidentRow, order: TodayOrder, day: string): TodayItem[] {
  if (incident.owner_told_on !== null) return [];
  const since = dayOf(incident.found_at);
  const what = `Tell the customer. ${labels[incident.kind]}: ${incident.what}`;
  const group = since < day ? 'late' : 'today';
  return [
    about(order, {
      kind: 'incident',
      group,
      what,
      dueOn: since,
      since,
      room: 'office',
      opens: 'incidents',
    }),
  ];
}

function fileClaim(incident: IncidentRow, order: TodayOrder, day: string): TodayItem[] {
  const { claim_until: until, claim_with: claimWith } = incident;
  if (until === null || incident.claim_filed_on !== null) return [];
  if (daysBetween(day, until) > claimWarningDays) return [];
  const passed = dueGroup(until, day) === 'late';
  const whom = claimWith === '' ? '' : ` with ${claimWith}`;
  const what = passed
    ? `The time for a claim${whom} is over and none is noted as filed: ask what can still be done.`
    : `File the claim${whom}: photographs, packaging and proof of value.`;
  return [
    about(order, {
      kind: 'claim',
      group: passed ? 'late' : 'today',
      what,
      dueOn: until,
      since: incident.happened_on,
      room: 'office',
      opens: 'incidents',
    }),
  ];
}

/** Told, and filed where there is something to file: it waits to be settled. */
function unsettled(incident: IncidentRow, order: TodayOrder): TodayItem {
  const filed = incident.claim_filed_on;
  const number = incident.claim_number === '' ? '' : ` ${incident.claim_number}`;
  const whom = incident.claim_with === '' ? '' : ` with ${incident.claim_with}`;
  const what =
    filed === null
      ? `${labels[incident.kind]}, not settled: ${incident.what}`
      : `Claim${number}${whom} is filed and not settled.`;
  return about(order, {
    kind: 'incident',
    group: 'waiting',
    what,
    since: filed ?? incident.happened_on,
    room: 'office',
    opens: 'incidents',
  });
}

/** What damage or loss still asks for, of closed orders too: it often shows after the parcel left. */
export function openIncident(incident: IncidentRow, order: TodayOrder, day: string): TodayItem[] {
  if (incident.settled_at !== null) return [];
  const due = [...tellOwner(incident, order, day), ...fileClaim(incident, order, day)];
  return due.length > 0 ? due : [unsettled(incident, order)];
}
