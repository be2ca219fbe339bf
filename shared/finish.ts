import { z } from './zod.ts';

/** Two-part: the only kind with a batch and a pot life. */
export const finishKinds = ['two-part', 'one-part', 'aerosol', 'hand-rubbed-oil'] as const;
export const finishKind = z.enum(finishKinds);
export type FinishKind = (typeof finishKinds)[number];
export const finishKindLabels: Record<FinishKind, string> = {
  'two-part': 'Two-part',
  'one-part': 'One-part',
  aerosol: 'Spray can',
  'hand-rubbed-oil': 'Hand-rubbed oil',
};

/** What is sanded: glass facing, bare wood, or an overlay of horn, wood or composite. */
export const substrates = ['glass', 'wood', 'overlay'] as const;
export const substrate = z.enum(substrates);
export type Substrate = (typeof substrates)[number];
export const substrateLabels: Record<Substrate, string> = {
  glass: 'Glass',
  wood: 'Wood',
  overlay: 'Overlay',
};

/** Parts of a bow that are sanded and coated each by itself. */
export const bowSections = ['upper-limb', 'lower-limb', 'riser', 'overlays'] as const;
export const bowSection = z.enum(bowSections);
export type BowSection = (typeof bowSections)[number];
export const bowSectionLabels: Record<BowSection, string> = {
  'upper-limb': 'Upper limb',
  'lower-limb': 'Lower limb',
  riser: 'Riser',
  overlays: 'Overlays',
};

export const coatPurposes = ['seal', 'first-clear', 'clear', 'oil'] as const;
export const coatPurpose = z.enum(coatPurposes);
export type CoatPurpose = (typeof coatPurposes)[number];
export const coatPurposeLabels: Record<CoatPurpose, string> = {
  seal: 'Seal coat',
  'first-clear': 'First clear coat over the lettering',
  clear: 'Clear coat',
  oil: 'Coat of oil',
};

/** Times after the last coat, in the order they pass; none stands for another. */
export const cureSteps = ['handle', 'stringAndFlex', 'wrap', 'full'] as const;
export const cureStep = z.enum(cureSteps);
export type CureStep = (typeof cureSteps)[number];
export const cureStepLabels: Record<CureStep, string> = {
  handle: 'Dry to handle',
  stringAndFlex: 'Safe to string and flex',
  wrap: 'Safe to wrap',
  full: 'Fully cured',
};

export const mixPartNames = ['resin', 'hardener', 'thinner'] as const;
export const mixPart = z.enum(mixPartNames);
export type MixPart = (typeof mixPartNames)[number];
export const mixPartLabels: Record<MixPart, string> = {
  resin: 'Resin',
  hardener: 'Hardener',
  thinner: 'Thinner',
};

/** Where a recoat window stands: too early, open, scuff first, closed, or not on the sheet. */
export const recoatStates = ['before', 'open', 'scuff', 'closed', 'off-sheet'] as const;
export const recoatState = z.enum(recoatStates);
export type RecoatState = (typeof recoatStates)[number];
export const recoatStateLabels: Record<RecoatState, string> = {
  before: 'Too early',
  open: 'Open',
  scuff: 'Scuff first',
  closed: 'Closed',
  'off-sheet': 'Not on the sheet',
};

export const clockKinds = [
  'induction',
  'pot-life',
  'recoat-opens',
  'recoat-closes',
  'handle',
  'string-and-flex',
  'wrap',
  'full-cure',
] as const;
export const clockKind = z.enum(clockKinds);
export type ClockKind = (typeof clockKinds)[number];
export const clockKindLabels: Record<ClockKind, string> = {
  induction: 'Let it stand',
  'pot-life': 'Pot life',
  'recoat-opens': 'Recoat opens',
  'recoat-closes': 'Recoat closes',
  handle: 'Dry to handle',
  'string-and-flex': 'Safe to string and flex',
  wrap: 'Safe to wrap',
  'full-cure': 'Fully cured',
};
