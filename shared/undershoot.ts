import { z } from './zod.ts';

/** What the shop offers for a bow that came out under its target: weight cannot be put back. */
export const undershootOffers = ['accept', 'price', 'remedy'] as const;
export const undershootOffer = z.enum(undershootOffers);
export type UndershootOffer = z.infer<typeof undershootOffer>;

export const undershootOfferLabels: Record<UndershootOffer, string> = {
  accept: 'Keep the bow as it is',
  price: 'A lower price',
  remedy: 'Something else to put it right',
};
