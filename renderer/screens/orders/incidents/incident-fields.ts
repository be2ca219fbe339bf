import type { Incident } from '../../../../shared/contract/incidents.ts';
import type { ContractRequests } from '../../../../shared/contract/types.ts';

type Request = Omit<ContractRequests['incidents']['edit'], 'commandId'>;

/** An incident as it stands in its form: days as their inputs hold them. */
export interface IncidentFields {
  what: string;
  ownerToldOn: string;
  ownerToldHow: string;
  remedy: string;
  claimWith: string;
  claimUntil: string;
  claimFiledOn: string;
  claimNumber: string;
}

export function fieldsOf(incident: Incident): IncidentFields {
  return {
    what: incident.what,
    ownerToldOn: incident.ownerToldOn ?? '',
    ownerToldHow: incident.ownerToldHow,
    remedy: incident.remedy,
    claimWith: incident.claimWith,
    claimUntil: incident.claimUntil ?? '',
    claimFiledOn: incident.claimFiledOn ?? '',
    claimNumber: incident.claimNumber,
  };
}

/** An emptied day is no day. */
export function requestOf(incident: Incident, fields: IncidentFields): Request {
  return {
    id: incident.id,
    rowVersion: incident.rowVersion,
    ...fields,
    ownerToldOn: fields.ownerToldOn || null,
    claimUntil: fields.claimUntil || null,
    claimFiledOn: fields.claimFiledOn || null,
  };
}
