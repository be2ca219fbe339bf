import { sql } from 'kysely';
import type { Found } from '../../../shared/contract/find.ts';
import { lotName } from '../../../shared/stores.ts';
import type { OpenShop } from '../../storage/context.ts';

/** The shelf or lot that a label of the stores is on; null for any other text. */
export async function scannedLabel(shop: OpenShop, text: string): Promise<Found | null> {
  const barcode = text.trim();
  if (barcode === '') return null;
  const lot = await shop.read
    .selectFrom('lot')
    .innerJoin('consumable', 'consumable.id', 'lot.consumable_id')
    .select(['lot.id', 'lot.number', 'lot.received_on', 'consumable.name'])
    // A wedge scanner types as the keyboard does: with the capitals lock on, small letters.
    .where('lot.barcode', '=', barcode.toUpperCase())
    .executeTakeFirst();
  if (lot !== undefined) {
    const name = lotName({ number: lot.number, receivedOn: lot.received_on });
    return { kind: 'lot', id: lot.id, title: lot.name, subtitle: `Lot ${name}` };
  }
  const shelf = await shop.read
    .selectFrom('consumable')
    .select(['id', 'name', 'shelf'])
    .where('barcode', 'in', [barcode, barcode.toUpperCase()])
    .executeTakeFirst();
  if (shelf === undefined) return null;
  return { kind: 'shelf', id: shelf.id, title: shelf.name, subtitle: shelf.shelf };
}

/** Consumables whose name, shelf and barcode together hold every word typed. */
export async function foundConsumables(shop: OpenShop, text: string): Promise<Found[]> {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
    .slice(0, 12);
  if (words.length === 0) return [];
  // Written as typed: % and _ are no wildcards in a name.
  const parts = words.map((word) => `%${word.replaceAll(/[%_\\]/g, '\\$&')}%`);
  const rows = await shop.read
    .selectFrom('consumable')
    .select(['id', 'name', 'shelf'])
    .where('active', '=', 1)
    .where(({ and }) =>
      and(
        parts.map(
          (part) =>
            sql<boolean>`lower(name || ' ' || shelf || ' ' || barcode) LIKE ${part} ESCAPE '\\'`,
        ),
      ),
    )
    .orderBy('name')
    .limit(6)
    .execute();
  return rows.map((row) => ({
    kind: 'consumable',
    id: row.id,
    title: row.name,
    subtitle: row.shelf,
  }));
}
