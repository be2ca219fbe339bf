import type { OpenShop } from '../../storage/context.ts';

/** Instant of the last bite of an order, the struck-out ones not counted; null where there is none. */
export async function lastBiteAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  const last = await db
    .selectFrom('removal')
    .select((eb) => eb.fn.max('done_at').as('at'))
    .where('order_id', '=', orderId)
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  return last?.at ?? null;
}

function later(...instants: readonly (string | null)[]): string | null {
  return (
    instants
      .filter((at) => at !== null)
      .sort()
      .at(-1) ?? null
  );
}

/** As recorded, or as noted before coats were records. */
async function lastCoatAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  const noted = await db
    .selectFrom('entry')
    .select((eb) => eb.fn.max('recorded_at').as('at'))
    .where('order_id', '=', orderId)
    .where('item', 'in', ['coat', 'first-clear'])
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  const coat = await db
    .selectFrom('coat')
    .select((eb) => eb.fn.max('at').as('at'))
    .where('order_id', '=', orderId)
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  return later(noted?.at ?? null, coat?.at ?? null);
}

/** Instant of the last bite or coat: what was looked over before it must be looked over again. */
export async function lastWorkAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  return later(await lastBiteAt(db, orderId), await lastCoatAt(db, orderId));
}
