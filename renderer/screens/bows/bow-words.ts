/** Answers as the screens write them. */
export const kindWords = [
  { value: 'longbow', label: 'Longbow' },
  { value: 'hybrid', label: 'Hybrid' },
  { value: 'recurve', label: 'Recurve' },
] as const;

export const constructionWords = [
  { value: 'glass-laminated', label: 'Glass-laminated' },
  { value: 'all-wood', label: 'All wood' },
  { value: 'other', label: 'Other' },
] as const;

export const takeDownWords = [
  { value: 'one-piece', label: 'One-piece' },
  { value: 'sleeve', label: 'Take-down, sleeve' },
  { value: 'bolted three-piece', label: 'Take-down, bolted three-piece' },
] as const;

export const handWords = [
  { value: 'right', label: 'Right hand' },
  { value: 'left', label: 'Left hand' },
  { value: 'unknown', label: 'Not known' },
] as const;

export const referenceWords = [
  { value: 'amo', label: 'AMO (throat + 1 3/4 in)' },
  { value: 'to-back', label: 'To the back of the bow' },
  { value: 'unknown', label: 'Not known' },
] as const;

export const facingWords = [
  { value: 'E-glass', label: 'E-glass' },
  { value: 'clear over veneer', label: 'Clear glass over veneer' },
  { value: 'carbon', label: 'Carbon' },
  { value: 'wood', label: 'Wood' },
  { value: 'bamboo', label: 'Bamboo' },
  { value: 'unknown', label: 'Not known' },
] as const;

export const glassHowWords = [
  { value: 'not-measured', label: 'Not measured' },
  { value: 'loupe', label: 'Loupe at the limb edge' },
  { value: 'maker', label: "Maker's figure" },
  { value: 'calliper', label: 'Calliper on a bare edge' },
] as const;

export const profileWords = [
  { value: 'straight', label: 'Straight' },
  { value: 'reflex-deflex', label: 'Reflex and deflex' },
  { value: 'recurve', label: 'Recurve' },
  { value: 'unknown', label: 'Not known' },
] as const;

/** Species whose trade is controlled, e.g. under CITES: a parcel over a border may need papers. */
export const listedSpeciesWords = [
  { value: 'none', label: 'None in this bow' },
  { value: 'listed', label: 'Listed: papers may be needed at a border' },
  { value: 'unknown', label: 'Not known' },
] as const;

export const lowStretchWords = [
  { value: 'yes', label: 'Tips bear it' },
  { value: 'no', label: 'Never: the tips do not bear it' },
  { value: 'unknown', label: 'Not known: treated as never' },
] as const;
