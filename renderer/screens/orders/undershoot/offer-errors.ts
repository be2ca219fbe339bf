import type { UndershootOffer } from '../../../../shared/undershoot.ts';

interface OfferFields {
  offer: UndershootOffer | null;
  /** Cents the price falls by; NaN while the text is no amount. */
  lowerCents: number | null;
  words: string;
}

export type OfferErrors = Partial<Record<keyof OfferFields, string>>;

/** What an offer still lacks, by field; empty when it can be written down. */
export function offerErrors({ offer, lowerCents, words }: OfferFields): OfferErrors {
  if (offer === null) return { offer: 'Choose one.' };
  const isOff = offer !== 'accept' && Number.isNaN(lowerCents);
  const isFree = offer === 'price' && (lowerCents ?? 0) === 0;
  return {
    ...(isOff || isFree ? { lowerCents: 'Give an amount.' } : {}),
    ...(offer === 'remedy' && words.trim().length < 3
      ? { words: 'Say what is offered to put it right.' }
      : {}),
  };
}
