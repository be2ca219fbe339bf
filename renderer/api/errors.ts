import { ORPCError } from '@orpc/client';
import { type ErrorCode, errorCodes } from '../../shared/errors.ts';
import { z } from '../../shared/zod.ts';

/** No answer came: the core is gone, restarting, or took longer than the deadline. */
export class NoAnswer extends Error {
  override readonly name = 'NoAnswer';
}

const withDetails = z.object({ details: z.record(z.string(), z.string()) });

/** One sentence for the person who met the error; never a stack or a code. */
export function sentenceOf(error: unknown): string {
  if (error instanceof NoAnswer) {
    return 'The program did not answer. What you typed is still here; try again.';
  }
  if (error instanceof ORPCError) return error.message;
  return 'Something went wrong on this screen. Load it again; if it stays, save a problem report in Settings.';
}

/** What to fix, by field path or record. Empty when the error names nothing. */
export function detailsOf(error: unknown): Record<string, string> {
  if (!(error instanceof ORPCError)) return {};
  const read = withDetails.safeParse(error.data);
  return read.success ? read.data.details : {};
}

/** The contract's code, or null when the error is not one a person caused or can act on. */
export function codeOf(error: unknown): ErrorCode | null {
  if (!(error instanceof ORPCError)) return null;
  return Object.hasOwn(errorCodes, error.code) ? (error.code as ErrorCode) : null;
}

/** True when nobody knows whether the call was carried out. */
export function isUnanswered(error: unknown): boolean {
  return error instanceof NoAnswer;
}
