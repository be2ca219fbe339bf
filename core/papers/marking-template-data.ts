/** Both sides of one place, inches from the true centre. */
export interface MarkingSide {
  presentIn: number;
  newIn: number;
}

/** A length as it is written: three decimals, and as a rule is read. */
export interface MarkingFigure {
  valueIn: number;
  decimalText: string;
  fractionText: string;
}

export interface MarkingStation {
  fromFadeIn: number;
  left: { new: MarkingFigure; off: MarkingFigure };
  right: { new: MarkingFigure; off: MarkingFigure };
  offTotal: MarkingFigure;
}

/** What is marked on one limb. Left and right as seen on its face with the tip pointing up. */
export interface MarkingLimb {
  limb: 'upper' | 'lower';
  face: 'back' | 'belly';
  /** Fade line to string nock along the limb, inches. */
  lengthIn: number;
  /** Rising from the fade; straight between two points. */
  outline: readonly { fromFadeIn: number; left: MarkingSide; right: MarkingSide }[];
  stations: readonly MarkingStation[];
}

export interface MarkingTemplateData {
  /** `long`: one page as long as the limb. */
  format: 'letter' | 'a4' | 'long';
  copy: 'bench';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  number: string;
  bowLine: string;
  plan: { version: number; acceptedOn: string; words: string };
  /** Limbs that are cut; what is said of the others. */
  limbs: readonly MarkingLimb[];
  uncut: string[];
}
