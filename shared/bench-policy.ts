import { between } from './fields.ts';
import { z } from './zod.ts';

const inches = (max: number) => between(0, max, `Give inches, 0 to ${max}.`);
const part = between(0, 1, 'Give a part between 0 and 1.');
const perKind = (value: z.ZodNumber) =>
  z.strictObject({ longbow: value, hybrid: value, recurve: value });

/** How far a reduction may go. */
export const planLimits = z.strictObject({
  /** Glass of a face is never left thinner, inches. */
  leastGlassIn: inches(0.12),
  /** Nor under this part of what it was when made. */
  leastGlassPart: part,
  /** Width at a cut station, inches. */
  leastWidthIn: perKind(inches(2)),
  leastWidthToThickness: perKind(between(0, 20, 'Give a ratio between 0 and 20.')),
  /** Where along the limb the ratio counts, inches past the fade and short of the nock. */
  ratioFromFadeIn: inches(20),
  ratioShortOfNockIn: inches(20),
  /** (New over old width)^3 at the weakest cut station: what is left against bending sideways. */
  leastSideStiffness: perKind(part),
  /** A recurve whose hook turns through more is not narrowed, degrees. */
  steepRecurveDeg: between(0, 180, 'Give degrees, 0 to 180.'),
  /** Less than this off both sides together is no cut, inches: a calliper does not tell it. */
  smallestCutIn: inches(0.1),
  /** Part of the present weight from which a drop is noted, confirmed, refused. */
  noteDropPart: part,
  confirmDropPart: part,
  confirmDropLbf: between(0, 60, 'Give pounds, 0 to 60.'),
  refuseDropPart: part,
});

/** Off each face, thousandths of an inch, with one standard deviation. */
const allowance = z.strictObject({
  meanThou: between(0.05, 20, 'An allowance is between 0.05 and 20 thousandths a face.'),
  sdThou: between(0.02, 10, 'Its spread is between 0.02 and 10 thousandths.'),
});

/** Which edge is cut to bring a string back that runs to one side of a tip. */
export const trackRules = ['same-side', 'other-side', 'off'] as const;
export const trackRule = z.enum(trackRules);
export type TrackRule = (typeof trackRules)[number];
export const trackRuleLabels: Record<TrackRule, string> = {
  'same-side': 'cut the side the string runs to',
  'other-side': 'cut the side away from the string',
  off: 'give no advice',
};

/** The shop's own rules at the weight bench. */
export const benchPolicy = z.strictObject({
  limits: planLimits,
  /** Kept above the target after sanding, lbf. */
  reserveLbf: between(0, 10, 'A reserve is between 0 and 10 lb.'),
  /** What sanding takes while no closed jobs of the shop tell. */
  allowances: z.strictObject({ 'full strip': allowance, 'final sanding only': allowance }),
  /** The face that is narrowed when a limb is trapped. */
  trapFace: z.enum(['back', 'belly']),
  trackRule,
  /** Smallest amounts that a hand can take off. */
  smallestSteps: z.strictObject({
    /** Off one side, inches. */
    sideIn: between(1 / 256, 1 / 8, 'A step is between 1/256 and 1/8 inch a side.'),
    /** Off each face, thousandths. */
    faceThou: between(0.1, 10, 'A step is between 0.1 and 10 thousandths a face.'),
    /** Light pass with paper after stripping, off each face, thousandths. */
    strokeThou: between(0.05, 2, 'A light pass is between 0.05 and 2 thousandths a face.'),
  }),
});
export type BenchPolicy = z.infer<typeof benchPolicy>;

/** Common practice throughout, none of it from print; every figure a setting. */
export const usualBenchPolicy: BenchPolicy = {
  limits: {
    leastGlassIn: 0.03,
    leastGlassPart: 0.75,
    leastWidthIn: { longbow: 3 / 8, hybrid: 7 / 16, recurve: 1 / 2 },
    leastWidthToThickness: { longbow: 1.5, hybrid: 2, recurve: 3 },
    ratioFromFadeIn: 2,
    ratioShortOfNockIn: 4,
    leastSideStiffness: { longbow: 0.5, hybrid: 0.6, recurve: 0.7 },
    steepRecurveDeg: 60,
    smallestCutIn: 0.005,
    noteDropPart: 0.1,
    confirmDropPart: 0.15,
    confirmDropLbf: 8,
    refuseDropPart: 0.25,
  },
  reserveLbf: 0.5,
  allowances: {
    'full strip': { meanThou: 1.4, sdThou: 0.6 },
    'final sanding only': { meanThou: 0.6, sdThou: 0.3 },
  },
  trapFace: 'back',
  trackRule: 'same-side',
  smallestSteps: { sideIn: 1 / 64, faceThou: 1, strokeThou: 0.25 },
};

/** What does not fit together, by field path; empty where all is well. */
export function benchPolicyTroubles({ limits }: BenchPolicy): Record<string, string> {
  const { noteDropPart, confirmDropPart, refuseDropPart } = limits;
  const troubles: Record<string, string> = {};
  if (confirmDropPart < noteDropPart) {
    troubles['limits.confirmDropPart'] =
      'A drop is confirmed from no less than it is noted from: raise this, or lower the other.';
  }
  if (refuseDropPart < confirmDropPart) {
    troubles['limits.refuseDropPart'] =
      'A drop is refused over no less than it is confirmed from: raise this, or lower the other.';
  }
  return troubles;
}
