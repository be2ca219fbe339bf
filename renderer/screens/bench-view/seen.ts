import type { StringTrack } from '../../../shared/bench.ts';
import type { LimbWork } from './cut-words.ts';
import type { CutPlace } from './remeasure-entry.ts';

/** What the hands do next; `done`: nothing to do here, the sentence says why. */
export type SeenStep =
  | { kind: 'weigh' }
  | { kind: 'questions'; readingId: string; questions: { about: string; question: string }[] }
  | { kind: 'bite'; upper: LimbWork; lower: LimbWork; step: number; isLightPass: boolean }
  | { kind: 'remeasure'; removalId: string; rowVersion: number; places: CutPlace[] }
  | { kind: 'glass' }
  | { kind: 'tiller' }
  | { kind: 'done' }
  | {
      kind: 'stop';
      words: string;
      why: string[];
      tone: 'stop' | 'attention';
      office: string | null;
    };

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
  stopAtLbf: number | null;
  targetLbf: number | null;
  drawIn: number | null;
  tiller: {
    nowIn: number | null;
    targetIn: number;
    upperTrack: StringTrack | null;
    lowerTrack: StringTrack | null;
  } | null;
  cautions: string[];
}
