/** What a file shows or proves. */
export const attachmentSubjects = [
  'bow',
  'packaging',
  'finding',
  'incident',
  'value',
  'message',
  'other',
] as const;
export type AttachmentSubject = (typeof attachmentSubjects)[number];

export const attachmentSubjectLabels: Record<AttachmentSubject, string> = {
  bow: 'The bow',
  packaging: 'Packaging',
  finding: 'A finding',
  incident: 'Damage or loss',
  value: 'Proof of value',
  message: 'A message',
  other: 'Something else',
};

/** Kinds of file the shop keeps, told by their content. */
export const attachmentMediaTypes = [
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/avif',
  'application/pdf',
  'message/rfc822',
  'text/plain',
] as const;
export type AttachmentMediaType = (typeof attachmentMediaTypes)[number];

/** Endings a file of each kind may have; the first is given to a file that has none of them. */
export const attachmentEndings: Record<AttachmentMediaType, readonly [string, ...string[]]> = {
  'image/jpeg': ['jpg', 'jpeg', 'jpe', 'jfif'],
  'image/png': ['png'],
  'image/webp': ['webp'],
  'image/avif': ['avif'],
  'application/pdf': ['pdf'],
  'message/rfc822': ['eml'],
  'text/plain': ['txt'],
};

export function isPicture(mediaType: AttachmentMediaType): boolean {
  return mediaType.startsWith('image/');
}

/** Largest file, bytes. */
export const maxAttachmentBytes = 25 * 1024 * 1024;
/** Largest picture, pixels: what fits in memory while it is made smaller. */
export const maxAttachmentPixels = 100_000_000;
/** Files of one order, or of one bow without an order. */
export const maxAttachmentsEach = 200;

/** The refusal of a file that is too large, also where only its size is known. */
export function tooLargeSentence(fileName: string): string {
  return `${fileName} is larger than 25 MB. Save it smaller, then add it again.`;
}
