import { type ConsentKind, type ConsentState, consentKinds } from '../../../shared/consents.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import type { StoredConsent } from './stored.ts';

/** What somebody has to follow up with the customer. */
export interface OpenQuestion {
  consent: StoredConsent;
  state: ConsentState;
  /** It was granted before what it referred to changed. */
  wasGranted: boolean;
}

type Facts = Pick<GateFacts, 'consent' | 'openWatches' | 'undershootOffered' | 'services'>;

/** Whether the order still has what a kind of consent is about. */
function isStillAbout(kind: ConsentKind, facts: Facts): boolean {
  switch (kind) {
    case 'watch-findings':
      return facts.openWatches > 0;
    case 'undershoot':
      return facts.undershootOffered;
    case 'alteration-acknowledgement':
      return facts.services.includes('reduce-weight');
    case 'marking-approval':
      return facts.services.includes('re-mark');
    case 'expected-weight-loss':
      return facts.services.includes('strip-refinish');
    case 'price-and-scope':
      return true;
  }
}

/** The newest consent of each kind that has no answer, or whose yes no longer fits. */
export function openQuestions(consents: readonly StoredConsent[], facts: Facts): OpenQuestion[] {
  const open: OpenQuestion[] = [];
  for (const kind of consentKinds) {
    const consent = consents.filter((each) => each.kind === kind).at(-1);
    const state = facts.consent(kind);
    if (consent === undefined || state === 'none') continue;
    const wasGranted = consent.answers.length > 0;
    const isOpen = !wasGranted || (state === 'outdated' && isStillAbout(kind, facts));
    if (isOpen) open.push({ consent, state, wasGranted });
  }
  return open;
}
