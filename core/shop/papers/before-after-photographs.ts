import { isPicture } from '../../../shared/attachments.ts';
import { attachmentMediaType } from '../../../shared/contract/attachments.ts';
import type { BeforeAfterPhotograph } from '../../papers/before-after.ts';
import { forPaper } from '../../storage/attachments/picture.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { AttachmentRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';

const dayTaken = (row: AttachmentRow) => row.taken_at?.slice(0, 10) ?? dayOf(row.added_at);
/** Cameras do not tell their time zone: a day of doubt orders nothing that matters here. */
const momentOf = (row: AttachmentRow) => row.taken_at ?? row.added_at.slice(0, 19);

async function photograph(
  shop: OpenShop,
  row: AttachmentRow,
  label: BeforeAfterPhotograph['label'],
): Promise<BeforeAfterPhotograph> {
  const original = await shop.attachments.read(row.sha256);
  const { bytes, widthPx, heightPx } = await forPaper(original, row.file_name);
  const words = [dayTaken(row), row.caption].filter((text) => text !== '').join(', ');
  return { label, words, jpeg: Buffer.from(bytes).toString('base64'), widthPx, heightPx };
}

/** The earliest and the latest picture of the bow itself that this order has. */
export async function bowPhotographs(
  shop: OpenShop,
  orderId: string,
): Promise<BeforeAfterPhotograph[]> {
  const rows = await shop.read
    .selectFrom('attachment')
    .selectAll()
    .where('order_id', '=', orderId)
    .where('about', '=', 'bow')
    .where('struck_reason', 'is', null)
    .execute();
  const pictures = rows
    .filter((row) => isPicture(attachmentMediaType.parse(row.media_type)))
    .sort((a, b) => momentOf(a).localeCompare(momentOf(b)) || a.added_at.localeCompare(b.added_at));
  const [first] = pictures;
  if (first === undefined) return [];
  const before = await photograph(shop, first, 'Before');
  const last = pictures.at(-1);
  if (last === undefined || last.id === first.id) return [before];
  return [before, await photograph(shop, last, 'After')];
}
