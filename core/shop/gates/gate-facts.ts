import type { ConsentKind, ConsentState } from '../../../shared/consents.ts';
import type { EntryItem } from '../../../shared/entries.ts';
import type { FinalCheckSubject } from '../../../shared/final-checklist.ts';
import type { GoingHome, Service, Stage } from '../../../shared/stages.ts';
import type { CoatState } from './coat-state.ts';
import type { FinishState } from './finish-state.ts';
import type { MeasuredWeight } from './inscribed-weight.ts';

/** The parcel that is to leave, as far as it is known. */
export interface ParcelFacts {
  measured: boolean;
  /** It was held against the limits of a carrier that the shop knows. */
  assessed: boolean;
  /** One sentence for each limit of the carrier that is broken. */
  refusals: readonly string[];
  tracking: string;
}

/** What the gates look at: plain facts of one order, read once. */
export interface GateFacts {
  services: readonly Service[];
  route: readonly Stage[];
  stage: Stage;
  /** Why the bow goes home before its work is done; null on the route of work. */
  goingHome: GoingHome | null;
  /** The owner of the bow is the shop: there is nobody to ask. */
  shopsOwn: boolean;
  bowIdentified: boolean;
  /** What decides which final checks apply. */
  checkSubject: FinalCheckSubject;
  boxOpened: boolean;
  conditionRecorded: boolean;
  /** Belongings are listed, or it is noted that nothing came along. */
  belongingsListed: boolean;
  belongingsBack: boolean;
  arrivalChecked: boolean;
  openStops: number;
  openWatches: number;
  /** Findings of any grade on this order. */
  anyFinding: boolean;
  /** Open stop findings have a photograph each. */
  stopsPictured: boolean;
  /** A return tag was printed after the last stop finding. */
  tagSinceStop: boolean;
  targetLbf: number | null;
  targetDrawIn: number | null;
  inscription: string;
  shipToKnown: boolean;
  consent(kind: ConsentKind): ConsentState | 'none';
  /** Latest entry of the kind that was not struck out. */
  entry(item: EntryItem): { outcome: 'ok' | 'not-ok'; recordedAt: string } | null;
  /** Arrival weighing on a scale checked inside its limit. */
  arrivalWeighed: boolean;
  /** Limb widths and thicknesses measured on this order. */
  stationsMeasured: boolean;
  /** Latest weighing after sanding and the last bite, AMO, at the target's draw, pound-force. */
  afterSandingLbf: number | null;
  afterSandingWeighed: boolean;
  /** The offer to the customer fits the weighing and the target as they are now. */
  undershootOffered: boolean;
  /** Every AMO weight measured since the last bite, oldest first. */
  measured: readonly MeasuredWeight[];
  /** Step a weight is rounded to on the bow, pound-force; shop policy. */
  markingRoundLbf: number;
  /** The accepted weight plan against the records as they are now. */
  plan: { state: 'none' } | { state: 'fits' } | { state: 'outdated'; why: string };
  /** Latest look at the glass that stands. */
  glassCheck: { outcome: 'ok' | 'not-ok'; at: string } | null;
  /** A reading far from its forecast whose questions nobody has answered. */
  openSurprise: boolean;
  /** Instant of the latest bite and tiller reading; null where there is none. */
  lastRemovalAt: string | null;
  tillerReadAt: string | null;
  /** Instant of the latest bite or coat; what was looked over before it counts no more. */
  lastWorkAt: string | null;
  /** A coat was put on in this order. */
  coated: boolean;
  /** What the finish room's records say. */
  finish: FinishState;
  /** The coat that is about to be recorded. */
  coat: CoatState;
  /** Damage done here whose remedy is not settled. */
  openIncidents: number;
  parcel: ParcelFacts | null;
  /** Still to be paid, cents; null while no price is set. */
  balanceCents: number | null;
}
