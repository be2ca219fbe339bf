import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Role } from '../../../shared/people.ts';
import { type Client, messagePortDoor } from '../../support/doors.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { furnishShop, type TestShop } from '../../support/furnish-shop.ts';
import { checkedScale, newCommandId } from '../../support/test-shop.ts';
import { copiedSheet } from './finish-room.ts';

/** One shop that many sequences run in, and the doors of the people who work there. */
export interface World {
  shop: TestShop;
  scaleId: string;
  carrierId: string;
  finishSystemId: string;
  as(role: Role): Client;
}

export async function openWorld(folder: string): Promise<World> {
  const shop = await furnishShop(folder);
  const door = messagePortDoor(shop.core);
  const clients = new Map<Role, Client>(
    (['owner', 'office', 'bench'] as const).map((role) => [
      role,
      door.client(shop.as(role).actor.personId),
    ]),
  );
  const as = (role: Role): Client => {
    const client = clients.get(role);
    if (client === undefined) throw new Error(`nobody works as ${role}`);
    return client;
  };
  const [carrier] = await as('owner').carriers.list();
  return {
    shop,
    scaleId: await checkedScale(shop),
    carrierId: carrier?.id ?? '',
    finishSystemId: await copiedSheet(as('owner')),
    as,
  };
}

/** A sequence works on one order; some on a bow that came once before. */
export interface Subject {
  orderId: string;
  random: () => number;
}

const jobs: Partial<typeof orderFields>[] = [
  {},
  { services: ['strip-refinish', 're-mark'], targetWeightLbf: null, targetDrawIn: null },
  { services: ['scuff-recoat'], targetWeightLbf: null, targetDrawIn: null },
  { services: ['new-string', 'grip-rest'], targetWeightLbf: null, targetDrawIn: null },
];

export async function takeInOne(world: World, random: () => number): Promise<Subject> {
  const client = world.as('office');
  const job = jobs[Math.floor(random() * jobs.length)] ?? {};
  const own = random() < 0.15;
  const { id } = await client.intake.submit({
    commandId: newCommandId(),
    draftId: null,
    customer: own ? { is: 'shop' } : { is: 'new', fields: customerFields },
    bow: random() < 0.9 ? { is: 'new', fields: bowFields } : { is: 'later' },
    order: { ...orderFields, ...job },
    startsAt: random() < 0.5 ? 'requested' : 'in-mail',
    cameBy: 'phone',
  });
  return { orderId: id, random };
}

export function orderOf(world: World, { orderId }: Subject): Promise<OrderDetail> {
  return world.as('owner').orders.get({ id: orderId });
}

export function pick<T>(random: () => number, list: readonly T[]): T {
  const chosen = list[Math.floor(random() * list.length)];
  if (chosen === undefined) throw new Error('nothing to choose from');
  return chosen;
}
