import { addBow } from '../core/shop/bows/bows.ts';
import { addCustomer } from '../core/shop/customers/customers.ts';
import { submitIntake } from '../core/shop/intake/submit.ts';
import { moveOrder } from '../core/shop/orders/move.ts';
import type { ShopContext } from '../core/storage/context.ts';
import type { CustomerFields } from '../shared/contract/customers.ts';
import { demoBows } from './cast/bows.ts';
import { demoCustomers } from './cast/customers.ts';
import { type Seeded, seeded } from './seeded.ts';

export interface LargeOptions {
  customers: number;
  bows: number;
  orders: number;
  onProgress?(done: number): void;
}

const services = ['reduce-weight', 're-mark', 'strip-refinish', 'scuff-recoat'] as const;

function pick<Item>(random: Seeded, from: readonly Item[]): Item {
  const item = from[Math.floor(random() * from.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
}

/** A first name of one and a family name of another of the cast, numbered so that all differ. */
function someone(random: Seeded, place: number): CustomerFields {
  const cast = [...demoCustomers.values()];
  const fields = pick(random, cast);
  const first = pick(random, cast).name.split(' ')[0] ?? '';
  const last = pick(random, cast).name.split(' ').at(-1) ?? '';
  return { ...fields, name: `${first} ${last} ${place + 1}`, email: `c${place + 1}@large.example` };
}

interface Marked {
  id: string;
  customerId: string;
  lbf: number;
}

type Command = { commandId: string };

async function takeIn(ctx: ShopContext, random: Seeded, command: Command, bow: Marked) {
  const order = await submitIntake(ctx, {
    ...command,
    draftId: null,
    customer: { is: 'known', id: bow.customerId },
    bow: { is: 'known', id: bow.id },
    order: {
      services: [pick(random, services)],
      targetWeightLbf: bow.lbf - 5,
      targetDrawIn: 28,
      tillerTarget: '',
      promisedOn: null,
      estimateCents: 20_000,
      shipTo: '',
      privateNotes: '',
      customerNotes: '',
    },
    startsAt: 'requested',
    cameBy: 'web form',
  });
  if (random() > 0.33) return;
  const { id, rowVersion } = order;
  await moveOrder(ctx, { commandId: ctx.newId(), id, rowVersion, to: 'in-mail' });
}

/**
 * Many records of an open shop, for measuring how it copes: customers, bows and orders, a third of
 * them on the way. By the same commands as the screens, as the given person, now; no photographs.
 */
export async function furnishLarge(ctx: ShopContext, options: LargeOptions): Promise<void> {
  const random = seeded(7);
  const total = options.customers + options.bows + options.orders;
  let done = 0;
  const step = (): Command => {
    done += 1;
    options.onProgress?.(done / total);
    return { commandId: ctx.newId() };
  };
  const customers: string[] = [];
  for (let place = 0; place < options.customers; place += 1) {
    customers.push((await addCustomer(ctx, { ...step(), ...someone(random, place) })).id);
  }
  const bows: Marked[] = [];
  const cast = [...demoBows.values()].filter(({ fields }) => fields.markedDrawIn === 28);
  for (let place = 0; place < options.bows; place += 1) {
    const { fields } = pick(random, cast);
    const customerId = pick(random, customers);
    const serial = `large ${place + 1}`;
    const { id } = await addBow(ctx, { ...step(), customerId, ...fields, serial });
    bows.push({ id, customerId, lbf: fields.markedWeightLbf ?? 40 });
  }
  for (let place = 0; place < options.orders; place += 1) {
    await takeIn(ctx, random, step(), pick(random, bows));
  }
}
