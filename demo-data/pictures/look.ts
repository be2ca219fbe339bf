import type { Glass, Wood } from './materials.ts';

/** What can be seen of a bow. */
export interface BowLook {
  kind: 'longbow' | 'hybrid' | 'recurve';
  takeDown: 'one-piece' | 'sleeve' | 'bolted three-piece';
  /** Inches, tip to tip along the bow. */
  length: number;
  limb: Wood;
  riser: Wood;
  accent: Wood;
  /** None on a bow all of wood. */
  glass: Glass | null;
  grip: 'leather' | 'bare';
}
