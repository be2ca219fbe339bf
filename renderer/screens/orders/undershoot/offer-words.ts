import type { Consent } from '../../../../shared/contract/consents.ts';
import type {
  OrderUndershoot,
  Shortfall,
  UndershootRecord,
} from '../../../../shared/contract/undershoot.ts';
import { decimal, difference, weightAtDraw } from '../../../../shared/measure.ts';
import { type UndershootOffer, undershootOfferLabels } from '../../../../shared/undershoot.ts';
import { moneyText } from '../../../parts/days.ts';

export const offerMeanings: Record<UndershootOffer, string> = {
  accept: 'At the agreed price.',
  price: 'The customer keeps the bow and pays less.',
  remedy: 'Say what: work on another bow, a string, the work again on other limbs.',
};

/** `2 lb under`. */
export function briefShortfall({ measuredLbf, targetLbf }: Shortfall): string {
  return `${decimal(difference(targetLbf, measuredLbf))} lb under`;
}

/** `2 lb under the target: 43# @ 28" measured, 45# @ 28" asked for`. */
export function shortfallText({ measuredLbf, targetLbf, drawIn }: Shortfall): string {
  const under = briefShortfall({ measuredLbf, targetLbf, drawIn });
  return `${under} the target: ${weightAtDraw(measuredLbf, drawIn)} measured, ${weightAtDraw(targetLbf, drawIn)} asked for`;
}

/** An offer in one line. */
export function offerText({ offer, priceChangeCents, words }: UndershootRecord): string {
  const less = priceChangeCents === 0 ? '' : `, ${moneyText(-priceChangeCents)} less`;
  return `${undershootOfferLabels[offer]}${less}${words === '' ? '' : `: ${words}`}`;
}

export type OfferStep = 'offer' | 'offer-again' | 'ask' | 'wait' | 'ask-again' | 'done';

/** What the decision waits for. The shop's own bow has nobody to ask: its offer decides. */
export function nextStepOf(
  undershoot: OrderUndershoot,
  consents: readonly Pick<Consent, 'kind' | 'state'>[],
  isShopsOwn: boolean,
): OfferStep {
  if (!undershoot.isOffered) {
    return undershoot.offers.some((offer) => offer.struckReason === null) ? 'offer-again' : 'offer';
  }
  if (isShopsOwn) return 'done';
  // Newest first: an older answer does not count.
  const state = consents.find((consent) => consent.kind === 'undershoot')?.state;
  if (state === undefined) return 'ask';
  if (state === 'granted') return 'done';
  return state === 'waiting' ? 'wait' : 'ask-again';
}

export const stepSentences: Record<OfferStep, string> = {
  offer: 'Say what the shop offers; then the customer decides.',
  'offer-again': 'It was weighed again, or the target changed: say again what the shop offers.',
  ask: 'The offer is written down. Now ask the customer.',
  wait: 'The customer was asked and has not answered. No reply never means yes.',
  'ask-again': 'The last answer does not stand for this offer: offer something else, or ask again.',
  done: 'Decided.',
};
