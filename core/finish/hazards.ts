/** What a finish's safety data sheet warns of that the finish room acts on. */
export type Hazard = 'isocyanate' | 'flammable-solvent' | 'self-heating-rags' | 'sanding-dust';

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
