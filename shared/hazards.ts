import { z } from './zod.ts';

/** What a safety data sheet warns of that the stores and the finish room act on. */
export const hazards = [
  'isocyanate',
  'flammable-solvent',
  'self-heating-rags',
  'sanding-dust',
] as const;
export const hazard = z.enum(hazards);
export type Hazard = (typeof hazards)[number];

export const hazardLabels: Readonly<Record<Hazard, string>> = {
  isocyanate: 'Isocyanates',
  'flammable-solvent': 'Flammable',
  'self-heating-rags': 'Rags that heat themselves',
  'sanding-dust': 'Sanding dust',
};

/**
 * Cautions at the point of use and on papers. They advise; the safety data sheet and the local
 * code decide. No air-purifying respirator is on NIOSH's list for isocyanates (HDI, Pocket Guide
 * 0320); rags into a closed metal can: 29 CFR 1910.107(g)(3).
 */
export const hazardCaution: Readonly<Record<Hazard, string>> = {
  isocyanate: 'Contains isocyanates: supplied air as its sheet says, not a dust mask.',
  'flammable-solvent': 'Flammable: no flame, spark or heater near it, and air moving.',
  'self-heating-rags': 'Rags can heat and burn: into a closed metal can, emptied daily.',
  'sanding-dust': 'Sanding dust: extraction and a fitted respirator.',
};

/** Who has the last word on every caution. */
export const whoDecides =
  'The safety data sheet, the local fire code and a licensed professional decide.';
