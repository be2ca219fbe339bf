import { shootingStyle } from '../bows.ts';
import { changed, drawIn, id, instant, line, requiredLine, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles, query } from './base.ts';
import { bow } from './bows.ts';
import { orderCard } from './order-card.ts';
import { address } from './setup.ts';

export const customerFields = z.strictObject({
  name: requiredLine(120),
  email: line(200),
  phone: line(40),
  preferredContact: z.enum(['email', 'phone', 'any']),
  address,
  shootingStyle,
  ownDrawIn: drawIn.nullable(),
  notes: text(4000),
});
export type CustomerFields = z.infer<typeof customerFields>;

export const customer = z.object({ id, rowVersion, createdAt: instant, ...customerFields.shape });
export type Customer = z.infer<typeof customer>;

export const customers = {
  /** Best matches first; an empty search lists the newest. */
  search: query()
    .input(z.strictObject({ text: line(200) }))
    .output(z.array(customer).max(50)),
  get: query()
    .input(z.strictObject({ id }))
    .output(
      z.object({
        customer,
        bows: z.array(bow).max(500),
        orders: z.array(orderCard).max(500),
      }),
    ),
  add: command(officeRoles).input(commandInput(customerFields.shape)).output(changed),
  edit: command(officeRoles)
    .input(commandInput({ id, rowVersion, ...customerFields.shape }))
    .output(changed),
};
