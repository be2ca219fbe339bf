import { changed, id, line, requiredLine, rowVersion } from '../fields.ts';
import { person, role } from '../people.ts';
import { unclaimedAfterFee, unclaimedAfterFeeWords, waitingPolicy } from '../waiting-policy.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

export const address = z.strictObject({
  street: line(200),
  city: line(120),
  region: line(120),
  postalCode: line(20),
  country: line(80),
});
export type Address = z.infer<typeof address>;

const shopFields = z.strictObject({
  name: requiredLine(120),
  address,
  phone: line(40),
  email: line(200),
  paperFormat: z.enum(['letter', 'a4']),
  tagFormat: z.enum(['4x6', 'a6']),
  contentsOnTag: z.boolean(),
  ...waitingPolicy.shape,
});
/** `isDemo`: the invented shop of the tour, in a data folder of its own. */
export const shopDetails = z.object({ ...shopFields.shape, rowVersion, isDemo: z.boolean() });
export type ShopDetails = z.infer<typeof shopDetails>;

const personFields = { name: requiredLine(120), initials: requiredLine(4), role };

export const setup = {
  /** First start: names the shop and its owner. Refused once somebody works here. */
  openShop: command('anyone')
    .input(
      commandInput({
        shop: shopFields.refine(unclaimedAfterFee, unclaimedAfterFeeWords),
        owner: z.strictObject({ name: requiredLine(120), initials: requiredLine(4) }),
      }),
    )
    .output(z.object({ personId: id })),
};

export const shop = {
  get: query('anyone').input(nothing).output(shopDetails),
  edit: command(ownerOnly)
    .input(
      commandInput({ rowVersion, ...shopFields.shape }).refine(
        unclaimedAfterFee,
        unclaimedAfterFeeWords,
      ),
    )
    .output(changed),
};

export const people = {
  list: query('anyone').input(nothing).output(z.array(person).max(200)),
  add: command(ownerOnly).input(commandInput(personFields)).output(changed),
  edit: command(ownerOnly)
    .input(commandInput({ id, rowVersion, ...personFields, active: z.boolean() }))
    .output(changed),
};
