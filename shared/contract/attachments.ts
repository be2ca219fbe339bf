import { attachmentMediaTypes, attachmentSubjects } from '../attachments.ts';
import { changed, id, instant, line, requiredLine, rowVersion } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';

export const attachmentAbout = z.enum(attachmentSubjects);
export const attachmentMediaType = z.enum(attachmentMediaTypes);

export const attachment = z.object({
  id,
  rowVersion,
  orderId: id.nullable(),
  orderNumber: line(40).nullable(),
  bowId: id.nullable(),
  findingId: id.nullable(),
  incidentId: id.nullable(),
  shipmentId: id.nullable(),
  about: attachmentAbout,
  fileName: line(200),
  mediaType: attachmentMediaType,
  bytes: z.int(),
  /** Size as shown, after the orientation the camera noted; null where it is no picture. */
  widthPx: z.int().nullable(),
  heightPx: z.int().nullable(),
  /** What the camera's clock said, `YYYY-MM-DDTHH:MM:SS`: cameras do not tell the time zone. */
  takenAt: line(19).nullable(),
  hasLocation: z.boolean(),
  caption: line(300),
  addedAt: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Attachment = z.infer<typeof attachment>;

/** Where to look. An order lists its own files; a bow lists everything of all its orders too. */
const place = z.union([
  z.strictObject({ orderId: id }),
  z.strictObject({ bowId: id }),
  z.strictObject({ findingId: id }),
  z.strictObject({ incidentId: id }),
  z.strictObject({ shipmentId: id }),
]);
export type AttachmentPlace = z.infer<typeof place>;

export const attachments = {
  /**
   * Keeps a file as it is. A file that the order already has is not added twice: the one that is
   * there is answered. Order and bow follow from a finding, an incident or a shipment.
   */
  add: command()
    .input(
      commandInput({
        file: z.file(),
        about: attachmentAbout,
        orderId: id.nullable(),
        bowId: id.nullable(),
        findingId: id.nullable(),
        incidentId: id.nullable(),
        shipmentId: id.nullable(),
        caption: line(300),
      }),
    )
    .output(z.object({ ...changed.shape, outcome: z.enum(['added', 'there-already']) })),
  /** Newest first, those struck out too. */
  list: query().input(place).output(z.array(attachment)),
  /** `thumb` fits a box of 320 px, `screen` one of 1600 px; both without anything the camera noted. */
  image: query()
    .input(z.strictObject({ id, size: z.enum(['thumb', 'screen', 'original']) }))
    .output(z.file()),
  /** A copy of a picture that may leave the shop: no location, no camera, no names. */
  copyToSend: query().input(z.strictObject({ id })).output(z.file()),
  describe: command()
    .input(commandInput({ id, rowVersion, caption: line(300), about: attachmentAbout }))
    .output(changed),
  /** The file stays and is shown struck, with the reason. */
  strikeOut: command()
    .input(
      commandInput({
        id,
        rowVersion,
        reason: requiredLine(400).min(3, 'Give the reason in a few words.'),
      }),
    )
    .output(changed),
};
