import { removalMethod, stringTrack } from '../bench.ts';
import { limb } from '../bows.ts';
import {
  between,
  changed,
  drawIn,
  forceLbf,
  id,
  instant,
  line,
  rowVersion,
  text,
} from '../fields.ts';
import { missingItem, override, refused } from '../gates.ts';
import { cutFace } from '../weight-plan.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';

const number = z.number();
const sentence = line(500);
/** Names what an advice rests on: the same records give the same advice. */
const advice = z.string().min(1).max(64);

/** What comes off one limb in one bite. Every station of the plan is there, the uncut ones too. */
const limbWork = z.object({
  limb,
  cuts: z
    .array(
      z.object({
        fromFadeIn: number,
        /** As last measured, inches. */
        widthNowIn: number,
        /** Seen from the belly with the tip up, inches. */
        offLeftIn: number,
        offRightIn: number,
      }),
    )
    .max(80),
  /** Off the faces, thousandths of an inch. */
  bellyThou: number,
  backThou: number,
});
export type BenchLimbWork = z.infer<typeof limbWork>;

/** Weights with one standard deviation; eight in ten such bites end inside the band. */
const forecast = z.object({
  weightLbf: number,
  sdLbf: number,
  bandLbf: z.tuple([number, number]),
  /** The same less the sanding that is still to come, lbf. */
  endLbf: number,
  tillerIn: number,
});
export type BenchForecast = z.infer<typeof forecast>;

/** A place that was cut and is measured again, inches. */
const cutPlace = z.object({
  limb,
  fromFadeIn: number,
  beforeIn: number,
  /** What the cut was meant to leave. */
  expectedIn: number,
});

/** A face that was thinned; measuring it again by loupe is offered, not asked for. */
const cutFacePlace = z.object({ limb, face: z.enum(['back', 'belly']), plannedThou: number });

const why = z.array(sentence).max(60);

/** What the hands do next; the kinds below the bite end the cutting, and say why. */
export const benchStep = z.discriminatedUnion('kind', [
  /** DO NOT STRING OR DRAW. */
  z.object({ kind: z.literal('stop-finding'), why }),
  /** Nothing is done here at this stage. */
  z.object({ kind: z.literal('not-at-bench') }),
  z.object({ kind: z.literal('no-plan') }),
  z.object({ kind: z.literal('plan-does-not-fit'), why }),
  z.object({
    kind: z.literal('questions'),
    readingId: id,
    /** Of the reading; `answerSurprise` wants it back. */
    rowVersion,
    /** Weighed and expected, lbf. */
    readLbf: number,
    expectedLbf: number,
    questions: z.array(z.object({ about: line(40), question: line(200) })).max(20),
  }),
  z.object({
    kind: z.literal('remeasure'),
    removalId: id,
    rowVersion,
    method: removalMethod,
    places: z.array(cutPlace).max(160),
    faces: z.array(cutFacePlace).max(4),
  }),
  z.object({ kind: z.literal('glass-check') }),
  z.object({ kind: z.literal('read-tiller') }),
  /** The first weighing after a removal. */
  z.object({ kind: z.literal('weigh') }),
  /** The weight is not known well enough; one more weighing would do. */
  z.object({
    kind: z.literal('weigh-again'),
    /**
     * The last weighing is off the target, all of them together are not, lbf; null where it is the
     * smallest step that is less than what the scale tells.
     */
    differs: z.object({ lastLbf: number, allLbf: number }).nullable(),
  }),
  z.object({
    kind: z.literal('bite'),
    method: removalMethod,
    /** The face that side cuts narrow. */
    face: cutFace,
    upper: limbWork,
    lower: limbWork,
    /** Smallest step that a hand can do: inches a side, or thousandths a face. */
    step: number,
    /** A light pass with paper after stripping. */
    isLightPass: z.boolean(),
    forecast,
  }),
  /** STOP - SAND ONLY. */
  z.object({
    kind: z.literal('sand-only'),
    /** The stripping and sanding is done at this stage and recorded here. */
    here: z.boolean(),
    forecast,
    /** Why even the smallest bite is left out, and what the strokes on record took so far. */
    why,
  }),
  z.object({ kind: z.literal('at-target'), forecast }),
  /** A decision for the customer. */
  z.object({ kind: z.literal('undershot'), byLbf: number, why }),
  /** Every bite that would fit breaks a limit of the shop. */
  z.object({ kind: z.literal('limit'), why }),
]);
export type BenchStep = z.infer<typeof benchStep>;

export const benchLogKinds = ['reading', 'removal', 'glass-check', 'tiller', 'surprise'] as const;

const logLine = z.object({
  kind: z.enum(benchLogKinds),
  id,
  rowVersion,
  what: line(500),
  at: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
  /** It can be struck out: a reading by `readings.strikeOut`, the rest by `bench.strikeOut...`. */
  canStrike: z.boolean(),
});
export type BenchLogLine = z.infer<typeof logLine>;

/** Everything that the bench view shows of an order. */
export const benchView = z.object({
  orderId: id,
  /** `takeBite` and `recordSanding` want it back: they are refused once the advice has changed. */
  advice,
  step: benchStep,
  /** The one sentence at the top. */
  sentence,
  /** Weight as far as it is known, lbf. `weighed`: false where it was reckoned after a removal. */
  now: z.object({ lbf: number, sdLbf: number.nullable(), weighed: z.boolean() }).nullable(),
  lastReading: z
    .object({ id, lbf: number, expectedLbf: number.nullable(), at: instant })
    .nullable(),
  planId: id.nullable(),
  /** Where the work stops before sanding; null where no plan fits, or nothing is to come. */
  stopAtLbf: number.nullable(),
  targetLbf: forceLbf.nullable(),
  drawIn: drawIn.nullable(),
  /** What the next weighing should show, with its spread, lbf; null where nothing tells. */
  expected: z.object({ lbf: number, sdLbf: number }).nullable(),
  bitesTaken: z.int(),
  /** Real over modelled drop of removals, as this bow has shown it. */
  effectiveness: z.object({ mean: number, sd: number }).nullable(),
  tiller: z
    .object({
      nowIn: number.nullable(),
      targetIn: number,
      upperTrack: stringTrack.nullable(),
      lowerTrack: stringTrack.nullable(),
    })
    .nullable(),
  /** What the gate of a bite still wants; empty: open. */
  missing: z.array(missingItem).max(100),
  /** Newest first. */
  log: z.array(logLine).max(500),
  /** Of this step. */
  cautions: z.array(sentence).max(20),
});
export type BenchView = z.infer<typeof benchView>;

const recordedOrRefused = z.discriminatedUnion('outcome', [
  z.object({ outcome: z.literal('recorded'), ...changed.shape }),
  refused,
]);

/** The full cut of a limb off each side, inches, or thousandths off a face: what the card counts in. */
const amount = between(0, 100, 'This amount is not possible.');

/** What is worked by advice: one bite after the other down to the target. */
export const benchWork = {
  /** Where an order stands at the bench, and what comes next. */
  get: query()
    .input(z.strictObject({ orderId: id }))
    .output(benchView),
  /**
   * The advised bite is done. `other`: what was taken where it was not what the card showed; every
   * place keeps its part of it. Passes the bite's gate.
   */
  takeBite: command()
    .input(
      commandInput({
        orderId: id,
        advice,
        other: z.strictObject({ upper: amount, lower: amount }).nullable(),
        tool: line(120),
        note: text(1000),
        override: override.optional(),
      }),
    )
    .output(recordedOrRefused),
  /**
   * Widths after a cut, and thousandths off a face by loupe where somebody measured them. Faces that
   * are left out count as they were meant.
   */
  remeasure: command()
    .input(
      commandInput({
        removalId: id,
        rowVersion,
        widths: z
          .array(
            z.strictObject({
              limb,
              fromFadeIn: between(0, 50, 'A station is between 0 and 50 inches from the fade.'),
              widthIn: between(0.05, 4, 'A width is between 1/20 and 4 inches.'),
            }),
          )
          .max(160),
        faces: z
          .array(
            z.strictObject({
              limb,
              face: z.enum(['back', 'belly']),
              thou: between(0, 40, 'Give thousandths off this face, 0 to 40.'),
            }),
          )
          .max(4),
      }),
    )
    .output(changed),
  /** The stripping and sanding is done; what it takes is reckoned from the plan's allowance and the strokes on record. */
  recordSanding: command()
    .input(
      commandInput({
        orderId: id,
        advice,
        tool: line(120),
        note: text(1000),
        override: override.optional(),
      }),
    )
    .output(recordedOrRefused),
  /**
   * Every question about a reading that did not fit is answered, in order. Where all is right the
   * reading stands; otherwise it is struck out, with the answer as the reason, and the bow is
   * weighed again.
   */
  answerSurprise: command()
    .input(
      commandInput({
        readingId: id,
        rowVersion,
        answers: z.array(z.strictObject({ about: line(40), isRight: z.boolean() })).max(20),
        note: text(1000),
      }),
    )
    .output(z.object({ outcome: z.enum(['stands', 'struck-out']), ...changed.shape })),
};
