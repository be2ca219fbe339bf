import { refuseField } from '../../shared/errors.ts';

/** @throws ShopError BAD_INPUT where the value is not a number above zero. `what` begins the sentence. */
export function refuseUnlessAboveZero(field: string, value: number, what: string): void {
  if (!Number.isFinite(value) || value <= 0) refuseField(field, `${what} must be more than 0.`);
}

/** @throws ShopError BAD_INPUT where the value is not a number of zero or more. */
export function refuseBelowZero(field: string, value: number, what: string): void {
  if (!Number.isFinite(value) || value < 0) refuseField(field, `${what} cannot be less than 0.`);
}

/** @throws ShopError BAD_INPUT where the value is not above 0 and at most 100. */
export function refuseUnlessPercent(field: string, value: number, what: string): void {
  if (!Number.isFinite(value) || value <= 0 || value > 100) {
    refuseField(field, `${what} must be more than 0 and at most 100 percent.`);
  }
}
