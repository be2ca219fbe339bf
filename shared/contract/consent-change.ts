import { cents, drawIn, forceLbf, line, text } from '../fields.ts';
import { service } from '../stages.ts';
import { z } from '../zod.ts';

/** A change of an order that an approval may rest on; what is left out stays as it is. */
export const consentChange = z.strictObject({
  services: z.array(service).max(7).optional(),
  targetWeightLbf: forceLbf.nullable().optional(),
  targetDrawIn: drawIn.nullable().optional(),
  estimateCents: cents.nullable().optional(),
  inscription: text(400).optional(),
  position: line(200).optional(),
  makerMark: line(200).optional(),
  /** Any line of the price is added, changed or removed. */
  priceLines: z.boolean().optional(),
});
export type ConsentChange = z.infer<typeof consentChange>;
