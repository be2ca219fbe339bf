import type { ContractRequests } from '../../../../shared/contract/types.ts';
import type { IncidentKind } from '../../../../shared/incidents.ts';
import { type FindingPlace, noPlace, placeErrors, placeLine } from '../findings/finding-place.ts';
import { needsPlace } from './incident-words.ts';

/** A new incident as it stands in its form. */
export interface NewIncident {
  kind: IncidentKind | null;
  happenedOn: string;
  what: string;
  place: FindingPlace;
  claimWith: string;
  claimUntil: string;
}

export const newIncident = (happenedOn: string, kind: IncidentKind | null = null): NewIncident => ({
  kind,
  happenedOn,
  what: '',
  place: noPlace,
  claimWith: '',
  claimUntil: '',
});

/** A claim goes to whoever carried the bow. */
export const isInTransit = (kind: IncidentKind | null) => kind !== null && kind !== 'damaged-here';

export interface NewIncidentErrors {
  kind?: string;
  happenedOn?: string;
  what?: string;
  place?: ReturnType<typeof placeErrors>;
}

/** What it still lacks, by field; empty when it can be written down. */
export function newIncidentErrors(fields: NewIncident): NewIncidentErrors {
  const place = needsPlace(fields.kind) ? placeErrors(fields.place) : {};
  return {
    ...(fields.kind === null ? { kind: 'Choose one.' } : {}),
    ...(fields.happenedOn === '' ? { happenedOn: 'Give the day.' } : {}),
    ...(fields.what.trim().length < 3 ? { what: 'Say what happened.' } : {}),
    ...(Object.keys(place).length > 0 ? { place } : {}),
  };
}

/** Fields that its kind has no use for are left out, whatever was typed into them before. */
export function newIncidentRequest(
  orderId: string,
  kind: IncidentKind,
  fields: NewIncident,
): Omit<ContractRequests['incidents']['record'], 'commandId'> {
  const inTransit = isInTransit(kind);
  return {
    orderId,
    kind,
    happenedOn: fields.happenedOn,
    what: fields.what,
    place: needsPlace(kind) ? placeLine(fields.place) : '',
    claimWith: inTransit ? fields.claimWith : '',
    claimUntil: inTransit ? fields.claimUntil || null : null,
  };
}
