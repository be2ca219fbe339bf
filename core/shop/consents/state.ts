import type { ConsentKind, ConsentState } from '../../../shared/consents.ts';
import { sha256 } from './hash.ts';
import type { StoredConsent } from './stored.ts';

/** Where one consent stands, given what its kind refers to now. No reply never means yes. */
export function stateOf(consent: StoredConsent, subjectNow: string): ConsentState {
  const last = consent.answers.at(-1);
  if (last?.answer === 'declined' || last?.answer === 'withdrawn') return last.answer;
  if (consent.otherBow) return 'outdated';
  if (consent.subject_sha256 !== sha256(subjectNow)) return 'outdated';
  return last === undefined ? 'waiting' : 'granted';
}

/** Where a kind of consent stands: the newest one asked decides; an older grant does not. */
export function consentStateNow(
  consents: readonly StoredConsent[],
  kind: ConsentKind,
  subjectNow: string,
): ConsentState | 'none' {
  const newest = consents.filter((consent) => consent.kind === kind).at(-1);
  return newest === undefined ? 'none' : stateOf(newest, subjectNow);
}
