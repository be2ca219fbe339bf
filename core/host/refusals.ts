import { ORPCError, ValidationError } from '@orpc/server';
import type { Logger } from 'pino';
import { errorCodes, ShopError } from '../../shared/errors.ts';

function fieldOf(path: readonly unknown[] | undefined): string {
  const keys = (path ?? []).map((part) =>
    typeof part === 'object' && part !== null && 'key' in part ? String(part.key) : String(part),
  );
  return keys.join('.').slice(0, 200) || 'input';
}

/** A refusal as the contract declares it. */
export function refusal(error: ShopError): ORPCError<string, unknown> {
  return new ORPCError(error.code, {
    defined: true,
    status: errorCodes[error.code].status,
    message: error.message,
    data: { details: error.details },
    cause: error,
  });
}

function badInput(cause: ValidationError): ShopError {
  const details: Record<string, string> = {};
  for (const issue of cause.issues.slice(0, 30)) {
    details[fieldOf(issue.path)] ??= issue.message.slice(0, 500);
  }
  const first = Object.entries(details)[0];
  const sentence = first === undefined ? 'The input is not right.' : `${first[0]}: ${first[1]}`;
  return new ShopError('BAD_INPUT', sentence, details);
}

/** SQLite's own refusals that a person can act on. */
function storageTrouble(error: unknown): ShopError | null {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'SQLITE_FULL' || code === 'ENOSPC') {
    return new ShopError('STORAGE', 'The disk is full. Nothing was written; free some space.');
  }
  if (code.startsWith('SQLITE_READONLY') || code.startsWith('SQLITE_IOERR')) {
    return new ShopError('STORAGE', 'The data folder cannot be written. Nothing was changed.');
  }
  return null;
}

/**
 * Turns whatever a procedure threw into what a client may see. Expected refusals keep their code
 * and sentence; a bug is logged with its cause and leaves as one plain sentence.
 */
export function toClientError(error: unknown, path: readonly string[], log: Logger): unknown {
  if (error instanceof ShopError) return refusal(error);
  if (error instanceof ORPCError) {
    const { cause } = error;
    if (error.code === 'BAD_REQUEST') {
      return refusal(
        cause instanceof ValidationError
          ? badInput(cause)
          : new ShopError('BAD_INPUT', 'The request could not be read.'),
      );
    }
    if (error.status < 500) return error;
  }
  const trouble = storageTrouble(error);
  if (trouble !== null) return refusal(trouble);
  log.error({ procedure: path.join('.'), err: error, cause: causeOf(error) }, 'bug');
  return new ORPCError('INTERNAL_SERVER_ERROR', {
    message: 'Something went wrong inside the program. Nothing was written. Save a problem report.',
  });
}

function causeOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || error.cause === undefined) return undefined;
  if (error.cause instanceof ValidationError) {
    return error.cause.issues.map((issue) => `${fieldOf(issue.path)}: ${issue.message}`).join('; ');
  }
  return String(error.cause);
}
