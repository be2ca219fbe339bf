import type { BowFields } from '../../shared/contract/bows.ts';
import type { Service } from '../../shared/stages.ts';
import type { DemoFinish } from '../cast/finishes.ts';
import type { Subject } from '../pictures/pictures.ts';
import type { Job } from './job.ts';
import type { Story } from './tell.ts';

/** Working days before today on which each part of an order happened. The story ends where one is missing. */
export interface Days {
  requested: number;
  mailed?: number;
  opened?: number;
  /** Consents asked. */
  asked?: number;
  answered?: number;
  /** Weight work: the first is its beginning, each is a day with bites. */
  work?: readonly number[];
  sanded?: number;
  finished?: number;
  cured?: number;
  checked?: number;
  packed?: number;
  left?: number;
}

export interface PlannedFinding {
  grade: 'cosmetic' | 'watch' | 'stop';
  place: string;
  note: string;
  picture?: Subject;
}

export type Moment = Exclude<keyof Days, 'asked' | 'answered' | 'mailed'> | 'agreed';

/** One order of the demo shop. */
export interface Plan {
  bow: string;
  services: readonly Service[];
  days: Days;
  /** Calendar days from today. */
  promised: number | null;
  dollars: number;
  cameBy: 'mail' | 'phone' | 'web form' | 'walk-in' | 'unannounced box';
  /** Pounds and inches AMO. */
  target?: readonly [lbf: number, drawIn: number];
  tiller?: string;
  customerNotes?: string;
  privateNotes?: string;
  handover?: 'collected';
  stripFirst?: true;
  /** Only the limbs came; weighed on this riser of the shop. */
  limbsOnly?: { set: number; riser: string };
  /** Which limb set of the bow, where the whole bow came. */
  limbSet?: number;
  belongings?: readonly string[];
  packaging?: string;
  boxDamaged?: true;
  condition?: string;
  notStrung?: string;
  findings?: readonly PlannedFinding[];
  pictures?: readonly Subject[];
  /** Pounds at the target's draw: on arrival, after each bite, after sanding. */
  weights?: { arrival: number; bites?: readonly number[]; sanded?: number };
  /**
   * The weight work is planned by reckoning and done by the card, as far as so many bites; without
   * it the bites are noted in words, as `weights` has them.
   */
  reckoned?: { measured: 'bare' | 'over-finish'; bites?: number };
  /** Inches AMO it is weighed at where there is no target. */
  weighedAt?: number;
  /** Why the owner let the finish go on without the air being read. */
  airNotRead?: string;
  /** The box is open, and nobody has looked the bow over yet. */
  justOpened?: true;
  /** Two-part where nothing else is said. */
  finish?: DemoFinish;
  inscription?: string;
  /** What else happened, after the part of that name. */
  also?: Partial<Record<Moment, (job: Job) => Story>>;
}

/** All that a draw length may be, given what the bow bears. */
export function weighingDraw(plan: Plan, bow: BowFields): number {
  return plan.target?.[1] ?? plan.weighedAt ?? bow.markedDrawIn ?? 28;
}
