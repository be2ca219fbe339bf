import type { AttachmentSubject } from '../../../shared/attachments.ts';
import type { Attachment, AttachmentPlace } from '../../../shared/contract/attachments.ts';

type Id = string | null | undefined;

/** What a strip of photographs belongs to: at least one id. The order is enough where there is one. */
export interface PhotoPlace {
  orderId?: Id;
  bowId?: Id;
  findingId?: Id;
  incidentId?: Id;
  shipmentId?: Id;
  /** What a photograph added here shows; a strip without a closer record lists only these. */
  about?: AttachmentSubject | undefined;
}

const records = ['findingId', 'incidentId', 'shipmentId'] as const;

/**
 * The list to read. Where the order is known it is the order's, so that the many strips of one
 * page read it once; null where nothing is known yet.
 */
export function listPlace(of: PhotoPlace): AttachmentPlace | null {
  if (of.orderId) return { orderId: of.orderId };
  if (of.findingId) return { findingId: of.findingId };
  if (of.incidentId) return { incidentId: of.incidentId };
  if (of.shipmentId) return { shipmentId: of.shipmentId };
  return of.bowId ? { bowId: of.bowId } : null;
}

/** Whether a file of that list belongs into this strip. */
export function belongs(file: Attachment, of: PhotoPlace): boolean {
  const named = records.filter((key) => of[key]);
  if (named.length > 0) return named.every((key) => file[key] === of[key]);
  return of.about === undefined || file.about === of.about;
}

/** Files that count first, each group newest first as listed. */
export function inOrder(files: readonly Attachment[]): Attachment[] {
  return files.toSorted(
    (a, b) => Number(a.struckReason !== null) - Number(b.struckReason !== null),
  );
}

export function subjectOf(of: PhotoPlace): AttachmentSubject {
  if (of.about !== undefined) return of.about;
  if (of.findingId) return 'finding';
  return of.incidentId ? 'incident' : 'bow';
}

/** The links to send with a file that is added here. */
export function linksOf(of: PhotoPlace) {
  return {
    orderId: of.orderId || null,
    // An order knows its bow; sent along, it would be refused when the bow is identified anew.
    bowId: of.orderId || records.some((key) => of[key]) ? null : of.bowId || null,
    findingId: of.findingId || null,
    incidentId: of.incidentId || null,
    shipmentId: of.shipmentId || null,
  };
}
