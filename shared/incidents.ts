import { z } from './zod.ts';

export const incidentKinds = ['damaged-here', 'damaged-in-transit', 'lost-in-transit'] as const;
export const incidentKind = z.enum(incidentKinds);
export type IncidentKind = z.infer<typeof incidentKind>;

export const incidentLabels: Record<IncidentKind, string> = {
  'damaged-here': 'Damaged in the shop',
  'damaged-in-transit': 'Damaged on the way',
  'lost-in-transit': 'Lost on the way',
};

/** Damage is a stop finding until it is repaired and looked at again; a lost bow cannot be drawn. */
export const isDamage = (kind: IncidentKind) => kind !== 'lost-in-transit';
