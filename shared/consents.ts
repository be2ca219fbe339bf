import { z } from './zod.ts';

export const consentKinds = [
  'alteration-acknowledgement',
  'marking-approval',
  'price-and-scope',
  'watch-findings',
  'expected-weight-loss',
  'undershoot',
] as const;
export const consentKind = z.enum(consentKinds);
export type ConsentKind = z.infer<typeof consentKind>;

export const consentLabels: Record<ConsentKind, string> = {
  'alteration-acknowledgement': 'Alteration acknowledgement',
  'marking-approval': 'Marking approval',
  'price-and-scope': 'Price and scope',
  'watch-findings': 'Findings to watch',
  'expected-weight-loss': 'Expected loss of weight',
  undershoot: 'Weight below the target',
};

/** Longest text a customer is asked, characters. Twenty long findings and the words around them fit. */
export const consentTextMax = 40_000;

export const answers = ['granted', 'declined', 'withdrawn'] as const;
export const answer = z.enum(answers);
export type Answer = z.infer<typeof answer>;

export const channels = ['in-person', 'email', 'phone'] as const;
export const channel = z.enum(channels);
export type Channel = z.infer<typeof channel>;
export const channelLabels: Record<Channel, string> = {
  'in-person': 'In person',
  email: 'E-mail',
  phone: 'Phone',
};

/** Where a consent stands. `outdated`: what it referred to has changed since. */
export const consentStates = ['waiting', 'granted', 'declined', 'withdrawn', 'outdated'] as const;
export const consentState = z.enum(consentStates);
export type ConsentState = z.infer<typeof consentState>;
export const consentStateLabels: Record<ConsentState, string> = {
  waiting: 'waiting for an answer',
  granted: 'granted',
  declined: 'declined',
  withdrawn: 'withdrawn',
  outdated: 'no longer fits: what it referred to has changed',
};
