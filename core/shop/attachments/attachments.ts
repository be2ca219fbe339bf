import {
  type Attachment,
  type AttachmentPlace,
  attachmentMediaType,
} from '../../../shared/contract/attachments.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { AttachmentRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';
import { placeOf } from './place.ts';
import { nameFor } from './words.ts';

type Inputs = ContractInputs['attachments'];

/** @throws ShopError NOT_FOUND */
export async function readAttachment(db: OpenShop['read'], id: string): Promise<AttachmentRow> {
  const row = await db.selectFrom('attachment').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('file', id);
  return row;
}

const nowhere = { orderId: null, bowId: null, findingId: null, incidentId: null, shipmentId: null };

function listed(shop: OpenShop) {
  return shop.read
    .selectFrom('attachment')
    .innerJoin('person', 'person.id', 'attachment.person_id')
    .leftJoin('shop_order', 'shop_order.id', 'attachment.order_id')
    .selectAll('attachment')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .orderBy('attachment.added_at', 'desc')
    .orderBy('attachment.id', 'desc')
    .limit(5000);
}

/** What belongs to a place. An order's files follow it to the bow it has now. */
function ofPlace(shop: OpenShop, place: AttachmentPlace) {
  const rows = listed(shop);
  if ('orderId' in place) return rows.where('attachment.order_id', '=', place.orderId);
  if ('findingId' in place) return rows.where('attachment.finding_id', '=', place.findingId);
  if ('incidentId' in place) return rows.where('attachment.incident_id', '=', place.incidentId);
  if ('shipmentId' in place) return rows.where('attachment.shipment_id', '=', place.shipmentId);
  return rows.where((eb) =>
    eb.or([
      eb('shop_order.bow_id', '=', place.bowId),
      eb.and([eb('attachment.order_id', 'is', null), eb('attachment.bow_id', '=', place.bowId)]),
    ]),
  );
}

/** Files of an order, a bow, a finding, an incident or a shipment, newest first. */
export async function listAttachments(
  shop: OpenShop,
  place: AttachmentPlace,
): Promise<Attachment[]> {
  await placeOf(shop.read, { ...nowhere, ...place });
  const rows = await ofPlace(shop, place).execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    orderId: row.order_id,
    orderNumber: row.order_number,
    bowId: row.bow_id,
    findingId: row.finding_id,
    incidentId: row.incident_id,
    shipmentId: row.shipment_id,
    about: row.about,
    fileName: row.file_name,
    mediaType: attachmentMediaType.parse(row.media_type),
    bytes: row.bytes,
    widthPx: row.width_px,
    heightPx: row.height_px,
    takenAt: row.taken_at,
    hasLocation: row.has_location === 1,
    caption: row.caption,
    addedAt: row.added_at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  }));
}

export function describeAttachment(ctx: ShopContext, input: Inputs['describe']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'attachments.describe' }, async (trx) => {
    const before = await readAttachment(trx.db, input.id);
    trx.about({ orderId: before.order_id, bowId: before.bow_id });
    const row = await trx.update('attachment', before.id, input.rowVersion, {
      caption: input.caption,
      about: input.about,
    });
    if (row.order_id !== null) {
      await note(trx, ctx, row.order_id, { kind: 'file', summary: `Described: ${nameFor(row)}` });
    }
    return changedOf(row);
  });
}

/** The record and the file stay: what somebody once relied on can still be seen. */
export function strikeOutAttachment(
  ctx: ShopContext,
  input: Inputs['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'attachments.strikeOut' }, async (trx) => {
    const before = await readAttachment(trx.db, input.id);
    trx.about({ orderId: before.order_id, bowId: before.bow_id });
    if (before.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This file is already struck out.');
    }
    const row = await trx.update('attachment', before.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    if (row.order_id !== null) {
      await note(trx, ctx, row.order_id, {
        kind: 'file',
        summary: `Struck out: ${nameFor(row)}`,
        reason: input.reason,
      });
    }
    return changedOf(row);
  });
}
