import { ShopError } from '../../../shared/errors.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { AttachmentRow } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { notFound } from '../record.ts';

type Db = OpenShop['read'];

/** What a file may be attached to, as the caller said. */
export interface Links {
  orderId: string | null;
  bowId: string | null;
  findingId: string | null;
  incidentId: string | null;
  shipmentId: string | null;
}

/** Where a file belongs, with everything that follows from what was said. */
export type Place = Pick<
  AttachmentRow,
  'order_id' | 'bow_id' | 'finding_id' | 'incident_id' | 'shipment_id'
>;

const records = { finding: 'findingId', incident: 'incidentId', shipment: 'shipmentId' } as const;

/** Order of a finding, an incident or a shipment. */
async function orderOf(db: Db, table: keyof typeof records, id: string): Promise<string> {
  const row = await db.selectFrom(table).select('order_id').where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound(table, id);
  return row.order_id;
}

async function bowOnly(db: Db, bowId: string): Promise<void> {
  const bow = await db.selectFrom('bow').select('id').where('id', '=', bowId).executeTakeFirst();
  if (bow === undefined) throw notFound('bow', bowId);
}

async function theOrder(db: Db, links: Links): Promise<string | null> {
  let orderId = links.orderId;
  for (const [table, field] of Object.entries(records) as [keyof typeof records, keyof Links][]) {
    const id = links[field];
    if (id === null) continue;
    const found = await orderOf(db, table, id);
    if (orderId !== null && found !== orderId) {
      throw new ShopError('CONFLICT', `The ${table} belongs to another order than the file.`, {
        [field]: `Open the order of the ${table} and add the file there.`,
      });
    }
    orderId = found;
  }
  return orderId;
}

/** @throws ShopError NOT_FOUND, CONFLICT where they contradict each other, BAD_INPUT for nowhere. */
export async function placeOf(db: Db, links: Links): Promise<Place> {
  const orderId = await theOrder(db, links);
  const order = orderId === null ? null : await readOrder(db, orderId);
  if (links.bowId !== null) await bowOnly(db, links.bowId);
  if (order === null && links.bowId === null) {
    throw new ShopError('BAD_INPUT', 'Say which order or bow the file belongs to.', {
      orderId: 'Choose an order or a bow.',
    });
  }
  if (order !== null && links.bowId !== null && order.bow_id !== links.bowId) {
    throw new ShopError('CONFLICT', `Order ${order.number} is about another bow.`, {
      bowId: 'Add the file to the order of this bow, or to the bow alone.',
    });
  }
  return {
    order_id: orderId,
    bow_id: order?.bow_id ?? links.bowId,
    finding_id: links.findingId,
    incident_id: links.incidentId,
    shipment_id: links.shipmentId,
  };
}
