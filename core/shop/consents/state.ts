import type { ConsentKind, ConsentState } from '../../../shared/consents.ts';
import { sha256 } from './hash.ts';
import type { StoredConsent } from './stored.ts';

/** Whether everything still has the hash of the day it was written. */
export function verificationOf(consent: StoredConsent) {
  return {
    text: sha256(consent.text) === consent.text_sha256,
    subject: sha256(consent.subject) === consent.subject_sha256,
    answers: consent.answers.every((answer) => answer.text_sha256 === consent.text_sha256),
  };
}

/** A text that is not the one asked can be agreed to by nobody. */
function isVerified(consent: StoredConsent): boolean {
  const { text, subject, answers } = verificationOf(consent);
  return text && subject && answers;
}

/** Where one consent stands, given what its kind refers to now. No reply never means yes. */
export function stateOf(consent: StoredConsent, subjectNow: string): ConsentState {
  const last = consent.answers.at(-1);
  if (!isVerified(consent)) return last?.answer === 'declined' ? 'declined' : 'outdated';
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
