import type { ShopContext } from '../../core/storage/context.ts';
import type { Role } from '../../shared/people.ts';
import type { Stage } from '../../shared/stages.ts';
import { type Client, messagePortDoor } from './doors.ts';
import { bowFields, customerFields, orderFields } from './fixtures.ts';
import { checkedScale, newCommandId, type TestShop, testShop } from './test-shop.ts';
import { Flow } from './whole-flow.ts';

/** A furnished shop with one order of every kind of record, to do and undo things in. */
export interface UndoShop {
  shop: TestShop;
  flow: Flow;
  client: Client;
  as(role: Role): Client;
  orderId: string;
  bowId: string;
  customerId: string;
  scaleId: string;
  /** Row version of the order now. */
  version(): Promise<number>;
  /** Puts the order straight into a stage: the way there is tested with the gates. */
  place(stage: Stage): Promise<void>;
}

export async function undoShop(
  bow: Partial<typeof bowFields> = {},
  order: Partial<typeof orderFields> = {},
): Promise<UndoShop> {
  const shop = await testShop();
  const door = messagePortDoor(shop.core);
  const as = (role: Role) => door.client(personOf(shop.as(role)));
  const client = as('owner');
  const customer = await client.customers.add({ commandId: newCommandId(), ...customerFields });
  const made = await client.bows.add({
    commandId: newCommandId(),
    customerId: customer.id,
    ...bowFields,
    ...bow,
  });
  const taken = await client.intake.submit({
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'known', id: customer.id },
    bow: { is: 'known', id: made.id },
    order: { ...orderFields, ...order },
    startsAt: 'requested',
    cameBy: 'phone',
  });
  const scaleId = await checkedScale(shop);
  const read = shop.core.shop().read;
  return {
    shop,
    flow: new Flow(shop, taken.id),
    client,
    as,
    orderId: taken.id,
    bowId: made.id,
    customerId: customer.id,
    scaleId,
    version: async () =>
      (
        await read
          .selectFrom('shop_order')
          .select('row_version')
          .where('id', '=', taken.id)
          .executeTakeFirstOrThrow()
      ).row_version,
    place: async (stage) => {
      await shop.core
        .shop()
        .write.updateTable('shop_order')
        .set({ stage })
        .where('id', '=', taken.id)
        .execute();
    },
  };
}

function personOf(ctx: ShopContext): string {
  return ctx.actor.personId;
}
