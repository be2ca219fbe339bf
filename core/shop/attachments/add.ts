import {
  type AttachmentMediaType,
  isPicture,
  maxAttachmentBytes,
  maxAttachmentsEach,
  tooLargeSentence,
} from '../../../shared/attachments.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { mediaTypeOf } from '../../storage/attachments/content.ts';
import { type PictureFacts, pictureFacts, smaller } from '../../storage/attachments/picture.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { AttachmentRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { changedOf } from '../record.ts';
import { keptName, shownName } from './file-name.ts';
import { type Place, placeOf } from './place.ts';
import { nameFor } from './words.ts';

type Input = ContractInputs['attachments']['add'];
type Added = ContractOutputs['attachments']['add'];

interface KeptFile {
  sha256: string;
  bytes: number;
  mediaType: AttachmentMediaType;
  facts: PictureFacts | null;
}

/** Checks a file and puts it on the disk, before any record of it is written. */
async function keepFile(ctx: ShopContext, file: File): Promise<KeptFile> {
  const name = shownName(file.name);
  if (file.size > maxAttachmentBytes) throw new ShopError('BAD_INPUT', tooLargeSentence(name));
  const bytes = new Uint8Array(await file.arrayBuffer());
  const mediaType = mediaTypeOf(bytes, name);
  const facts = isPicture(mediaType) ? await pictureFacts(bytes, name) : null;
  const thumb = facts === null ? null : await smaller(bytes, 'thumb', name);
  const sha256 = await ctx.attachments.put(bytes);
  if (thumb !== null) await ctx.attachments.derived(sha256, 'thumb.webp', async () => thumb);
  return { sha256, bytes: bytes.length, mediaType, facts };
}

/** Files of the same order, or of the same bow where there is no order. */
function nearby(trx: CommandTransaction, place: Place) {
  const rows = trx.db.selectFrom('attachment');
  return place.order_id === null
    ? rows.where('order_id', 'is', null).where('bow_id', '=', place.bow_id)
    : rows.where('order_id', '=', place.order_id);
}

const links = ['finding_id', 'incident_id', 'shipment_id'] as const;

/** The same file, unless both say what they belong to and mean different things. */
async function sameFile(
  trx: CommandTransaction,
  sha256: string,
  place: Place,
): Promise<AttachmentRow | undefined> {
  const rows = await nearby(trx, place)
    .selectAll()
    .where('sha256', '=', sha256)
    .where('struck_reason', 'is', null)
    .orderBy('id')
    .execute();
  const fits = (row: AttachmentRow) =>
    links.every((key) => place[key] === null || row[key] === null || row[key] === place[key]);
  const exact = (row: AttachmentRow) => links.every((key) => row[key] === place[key]);
  return rows.find(exact) ?? rows.find(fits);
}

/** A photograph that was on the order is now also the one of a finding, incident or shipment. */
async function linkTo(
  trx: CommandTransaction,
  row: AttachmentRow,
  place: Place,
  about: AttachmentRow['about'],
): Promise<AttachmentRow> {
  const missing = links.filter((key) => place[key] !== null && row[key] === null);
  if (missing.length === 0) return row;
  const patch = Object.fromEntries(missing.map((key) => [key, place[key]]));
  return trx.update('attachment', row.id, row.row_version, { ...patch, about });
}

async function refuseTooMany(trx: CommandTransaction, place: Place, name: string): Promise<void> {
  const { n } = await nearby(trx, place)
    .select((eb) => eb.fn.countAll<number>().as('n'))
    .executeTakeFirstOrThrow();
  if (n < maxAttachmentsEach) return;
  const where = place.order_id === null ? 'bow' : 'order';
  throw new ShopError(
    'CONFLICT',
    `${name} was not added: this ${where} already has ${maxAttachmentsEach} files, the most it can hold.`,
  );
}

function newRow(ctx: ShopContext, at: string, kept: KeptFile, input: Input, place: Place) {
  return {
    id: ctx.newId(),
    ...place,
    about: input.about,
    file_name: keptName(input.file.name, kept.mediaType),
    media_type: kept.mediaType,
    sha256: kept.sha256,
    bytes: kept.bytes,
    width_px: kept.facts?.widthPx ?? null,
    height_px: kept.facts?.heightPx ?? null,
    taken_at: kept.facts?.takenAt ?? null,
    has_location: kept.facts?.hasLocation ? (1 as const) : (0 as const),
    caption: input.caption,
    added_at: at,
    person_id: ctx.actor.personId,
    struck_reason: null,
  };
}

/** @see contract.attachments.add @throws ShopError with a sentence that names the file. */
export async function addAttachment(ctx: ShopContext, input: Input): Promise<Added> {
  // Asked before the file is kept, so that a wrong order leaves no file behind.
  await placeOf(ctx.read, input);
  const kept = await keepFile(ctx, input.file);
  return runCommand(ctx, { id: input.commandId, name: 'attachments.add' }, async (trx) => {
    const place = await placeOf(trx.db, input);
    trx.about({ orderId: place.order_id, bowId: place.bow_id });
    const there = await sameFile(trx, kept.sha256, place);
    if (there !== undefined) {
      const row = await linkTo(trx, there, place, input.about);
      if (row !== there && row.order_id !== null) {
        await note(trx, ctx, row.order_id, { kind: 'file', summary: `Linked: ${nameFor(row)}` });
      }
      return { outcome: 'there-already', ...changedOf(row) };
    }
    await refuseTooMany(trx, place, shownName(input.file.name));
    const row = await trx.insert('attachment', newRow(ctx, trx.at, kept, input, place));
    if (row.order_id !== null) {
      await note(trx, ctx, row.order_id, { kind: 'file', summary: `Added: ${nameFor(row)}` });
    }
    return { outcome: 'added', ...changedOf(row) };
  });
}
