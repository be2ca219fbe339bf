import { removalMethod } from '../bench.ts';
import { construction } from '../bows.ts';
import { day, drawIn, id, line } from '../fields.ts';
import { learnedFigure, planMethod, sanding } from '../weight-plan.ts';
import { z } from '../zod.ts';
import { nothing, officeRoles, query } from './base.ts';

/** One closed job: what the plan said, and what the scale said at the end. */
export const forecastJob = z.object({
  orderId: id,
  orderNumber: line(20),
  closedOn: day,
  bowName: line(300),
  construction,
  /** Of the plan it left with. */
  method: planMethod,
  /** What the bites were that took its weight off, each named once; none where it was only sanded. */
  biteMethods: z.array(removalMethod).max(6),
  bites: z.int().min(0),
  weighings: z.int().min(0),
  drawIn,
  arrivalLbf: z.number(),
  targetLbf: z.number(),
  /** At the end, by the plan's figures for what was taken off, with its eight-in-ten band. */
  forecastLbf: z.number(),
  bandLbf: z.tuple([z.number(), z.number()]),
  measuredLbf: z.number(),
  isInside: z.boolean(),
  /** Measured drop from arrival, and what the plan said it would be, lbf. */
  measuredDropLbf: z.number(),
  forecastDropLbf: z.number(),
  /** Null where the job has no weighing on both sides of its sanding, or no measured bite. */
  allowanceThou: z.number().nullable(),
  sanding: sanding.nullable(),
  effectiveness: z.number().nullable(),
});
export type ForecastJob = z.infer<typeof forecastJob>;

/** A closed job with a plan that tells nothing of its forecast, and why. */
export const untoldJob = forecastJob
  .pick({
    orderId: true,
    orderNumber: true,
    closedOn: true,
    bowName: true,
    construction: true,
    method: true,
  })
  .extend({ why: line(200) });
export type UntoldJob = z.infer<typeof untoldJob>;

export const learned = {
  /** How the shop's forecasts have fared, and what its closed jobs teach. */
  forecastRecord: query(officeRoles)
    .input(nothing)
    .output(
      z.object({
        /** Newest first. */
        jobs: z.array(forecastJob).max(500),
        /** Left out, newest first. */
        untold: z.array(untoldJob).max(500),
        inside: z.int(),
        /** What a band promises: eight in ten. */
        promisedPart: z.number(),
        allowances: z
          .array(
            z.object({
              construction,
              sanding,
              /** Thousandths off each face. */
              figure: learnedFigure,
              usual: z.object({ mean: z.number(), sd: z.number() }),
            }),
          )
          .max(20),
        /** What a stroke takes, for the constructions that were sanded by counted strokes. */
        strokes: z
          .array(
            z.object({
              construction,
              /** Closed jobs that tell. */
              jobs: z.int().min(1),
              /** Thousandths off each face by a hundred strokes of coarse grain; null under three jobs. */
              aHundred: z.object({ mean: z.number(), sd: z.number() }).nullable(),
            }),
          )
          .max(3),
        effectiveness: z
          .array(
            z.object({
              section: z.enum(['measured', 'unknown']),
              figure: learnedFigure,
              usual: z.object({ mean: z.number(), sd: z.number() }),
            }),
          )
          .max(4),
      }),
    ),
};
