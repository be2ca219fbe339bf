import type { Incident } from '../../../../shared/contract/incidents.ts';
import { type IncidentKind, isDamage } from '../../../../shared/incidents.ts';
import { daysUntil, fullDay } from '../../../parts/days.ts';
import type { MarkKind } from '../../../parts/mark.tsx';

export const kindMeanings: Record<IncidentKind, string> = {
  'damaged-here': 'It happened in the shop. The customer is told, and a remedy agreed.',
  'damaged-in-transit': 'The box or the bow arrived damaged, here or at its owner.',
  'lost-in-transit': 'The parcel did not arrive.',
};

/** What to do at once, while it can still be done. */
export function firstSteps(kind: IncidentKind): string[] {
  if (kind === 'damaged-here') {
    return ['Unstring it and leave it so.', 'Photograph the damage before anything is touched.'];
  }
  if (kind === 'damaged-in-transit') {
    return [
      'Keep the box and all its packing: a carrier asks to see them.',
      'Photograph box, packing and damage before anything is touched.',
      "The carrier's own terms decide how long and in which form a claim may be made.",
    ];
  }
  return [
    'Have the tracking number and the evidence of the value at hand.',
    "The carrier's own terms decide from which day a parcel counts as lost.",
  ];
}

export interface ClaimLine {
  mark: MarkKind | null;
  text: string;
}

/** Where the claim stands; null where there is none to make. */
export function claimLine(incident: Incident): ClaimLine | null {
  const { claimWith, claimUntil, claimFiledOn, claimNumber, settledAt } = incident;
  const at = claimWith === '' ? '' : ` with ${claimWith}`;
  if (claimFiledOn !== null) {
    const number = claimNumber === '' ? '' : `, number ${claimNumber}`;
    return { mark: 'done', text: `Claim filed${at} on ${fullDay(claimFiledOn)}${number}` };
  }
  if (claimUntil === null) return claimWith === '' ? null : { mark: null, text: `Claim${at}` };
  const day = fullDay(claimUntil);
  if (settledAt !== null) return { mark: null, text: `Claim${at}: not filed, until ${day}` };
  const left = daysUntil(claimUntil);
  if (left < 0) return { mark: 'attention', text: `Claim${at}: the last day was ${day}` };
  const days = left === 0 ? 'today' : left === 1 ? '1 day left' : `${left} days left`;
  return {
    mark: left <= 7 ? 'attention' : null,
    text: `Claim${at}: file it until ${day}, ${days}`,
  };
}

/** What a settlement still waits for, one sentence each. */
export function stillOpen(incident: Incident, isShopsOwn: boolean): string[] {
  return [
    ...(incident.ownerToldOn === null && !isShopsOwn ? ['The customer has not been told.'] : []),
    ...(incident.remedy.trim() === '' ? ['No remedy is agreed.'] : []),
  ];
}

/** Damage bears a place on the bow; a lost parcel has none. */
export const needsPlace = (kind: IncidentKind | null) => kind !== null && isDamage(kind);
