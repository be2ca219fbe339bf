import { attachmentSubjectLabels, isPicture } from '../../../shared/attachments.ts';
import { attachmentMediaType } from '../../../shared/contract/attachments.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type PictureSize, smaller, withoutNotes } from '../../storage/attachments/picture.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { AttachmentRow } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { readAttachment } from './attachments.ts';
import { fileWords } from './file-name.ts';

type Inputs = ContractInputs['attachments'];

function fileOf(bytes: Uint8Array, name: string, type: string): File {
  return new File([bytes as BlobPart], name, { type });
}

function mediaTypeOf(row: AttachmentRow) {
  return attachmentMediaType.parse(row.media_type);
}

async function smallerOf(shop: OpenShop, row: AttachmentRow, size: PictureSize): Promise<File> {
  if (!isPicture(mediaTypeOf(row))) {
    throw new ShopError(
      'CONFLICT',
      `${row.file_name} is no picture. Open or save the file itself.`,
    );
  }
  const bytes = await shop.attachments.derived(row.sha256, `${size}.webp`, async () =>
    smaller(await shop.attachments.read(row.sha256), size, row.file_name),
  );
  return fileOf(bytes, `${row.id} ${size}.webp`, 'image/webp');
}

/** A picture in the size asked for, or the file as it came. */
export async function attachmentImage(shop: OpenShop, input: Inputs['image']): Promise<File> {
  const row = await readAttachment(shop.read, input.id);
  if (input.size !== 'original') return smallerOf(shop, row, input.size);
  return fileOf(await shop.attachments.read(row.sha256), row.file_name, mediaTypeOf(row));
}

/** `26-0147 upper fade.jpg` */
async function nameToSend(shop: OpenShop, row: AttachmentRow, ending: string): Promise<string> {
  const words = fileWords(row.caption || attachmentSubjectLabels[row.about].toLowerCase());
  const number = row.order_id === null ? '' : (await readOrder(shop.read, row.order_id)).number;
  return `${`${number} ${words || 'photograph'}`.trim()}.${ending}`;
}

/**
 * A copy that may leave the shop. PDF and messages are refused rather than passed on: they can
 * hold names, earlier versions and places that this program does not see, and whoever asks here
 * relies on there being none. The file itself can still be saved as it is.
 */
export async function copyToSend(shop: OpenShop, input: Inputs['copyToSend']): Promise<File> {
  const row = await readAttachment(shop.read, input.id);
  if (row.struck_reason !== null) {
    throw new ShopError('CONFLICT', `${row.file_name} is struck out. Choose another to send.`);
  }
  if (!isPicture(mediaTypeOf(row))) {
    throw new ShopError(
      'CONFLICT',
      `${row.file_name} may carry hidden names or places that cannot be taken out here. Read it, then send the file itself or a photograph of it.`,
    );
  }
  const original = await shop.attachments.read(row.sha256);
  const copy = await withoutNotes(original, row.file_name);
  const ending = copy.mediaType === 'image/png' ? 'png' : 'jpg';
  return fileOf(copy.bytes, await nameToSend(shop, row, ending), copy.mediaType);
}
