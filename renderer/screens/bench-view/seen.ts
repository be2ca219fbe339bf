import type { StringTrack } from '../../../shared/bench.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import type { LimbWork } from './cut-words.ts';
import type { CutFace, CutPlace } from './remeasure-entry.ts';

/** Another screen where the next thing is done. */
export interface Way {
  label: string;
  href: string;
}

/** What the hands do next. */
export type SeenStep =
  | { kind: 'weigh' }
  | {
      kind: 'questions';
      readingId: string;
      rowVersion: number;
      questions: { about: string; question: string }[];
    }
  | {
      kind: 'bite';
      upper: LimbWork;
      lower: LimbWork;
      step: number;
      isLightPass: boolean;
      /** Where most such bites end: `Eight in ten end between 47.1 and 47.9 lb.` */
      band: string;
    }
  | {
      kind: 'remeasure';
      removalId: string;
      rowVersion: number;
      places: CutPlace[];
      faces: CutFace[];
    }
  | { kind: 'glass' }
  | { kind: 'tiller' }
  /** Nothing to cut here; the sentence says why. */
  | { kind: 'idle'; isWeighed: boolean; way: Way }
  /** Fills the screen. */
  | { kind: 'stop'; words: string; why: string[]; tone: 'stop' | 'attention'; way: Way }
  /** STOP - SAND ONLY, where the sanding is done and recorded. */
  | { kind: 'sand' };

/** Everything that the bench view shows of an order, in its own terms. */
export interface Seen {
  orderId: string;
  number: string;
  customer: string;
  bow: string;
  /** Names the advice: where it changes under the hand, the screen says so. */
  advice: string;
  step: SeenStep;
  sentence: string;
  now: { lbf: number; sdLbf: number | null; isWeighed: boolean } | null;
  /** What the last weighing was and should have been; null while none counts. */
  told: string | null;
  stopAtLbf: number | null;
  targetLbf: number | null;
  drawIn: number | null;
  tiller: {
    nowIn: number | null;
    targetIn: number;
    upperTrack: StringTrack | null;
    lowerTrack: StringTrack | null;
  } | null;
  /** What must be there before the next bite. */
  missing: readonly MissingItem[];
  cautions: readonly string[];
}
