/** Every error a person can meet, by code. A code is never reused for another meaning. */
export const errorCodes = {
  NOT_READY: { status: 503, message: 'The shop is not open yet.' },
  NOT_SIGNED_ON: { status: 401, message: 'Choose who is working first.' },
  NOT_ALLOWED: { status: 403, message: 'Your role may not do this.' },
  NOT_FOUND: { status: 404, message: 'This record does not exist.' },
  STALE: { status: 409, message: 'Somebody changed this in the meantime.' },
  CONFLICT: { status: 409, message: 'This cannot be done as things stand.' },
  BAD_INPUT: { status: 400, message: 'Something in the form is not right.' },
  UNPRINTABLE: { status: 422, message: 'The paper cannot be printed as it stands.' },
  STORAGE: { status: 500, message: 'The data folder could not be read or written.' },
} as const;

export type ErrorCode = keyof typeof errorCodes;

/** JSON form of a {@link ShopError}. `details` names what to fix, by field or record. */
export interface ShopErrorJson {
  code: ErrorCode;
  message: string;
  details: Record<string, string>;
}

/** The one error a person is meant to read: a code from the contract and a sentence to act on. */
export class ShopError extends Error {
  override readonly name = 'ShopError';
  readonly code: ErrorCode;
  readonly details: Record<string, string>;

  constructor(
    code: ErrorCode,
    message: string,
    details: Record<string, string> = {},
    cause?: unknown,
  ) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
    this.details = details;
  }

  toJSON(): ShopErrorJson {
    return { code: this.code, message: this.message, details: this.details };
  }
}

/** Refuses one field of an input, in a sentence that says what to do. */
export function refuseField(field: string, sentence: string): never {
  throw new ShopError('BAD_INPUT', sentence, { [field]: sentence });
}
