import { attachmentSubjectLabels, isPicture } from '../../../shared/attachments.ts';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import { momentText } from '../days.ts';

type Shown = Pick<
  Attachment,
  'caption' | 'about' | 'takenAt' | 'addedAt' | 'mediaType' | 'fileName'
>;

export const isPhoto = (file: Pick<Attachment, 'mediaType'>) => isPicture(file.mediaType);

/** When it was taken by the camera's clock, else when it was added here. */
export function whenText({ takenAt, addedAt }: Pick<Attachment, 'takenAt' | 'addedAt'>): string {
  return takenAt === null ? `added ${momentText(addedAt)}` : `taken ${momentText(takenAt)}`;
}

/** The caption, else what it shows; a document by its name. */
export function titleOf(file: Shown): string {
  if (file.caption !== '') return file.caption;
  return isPhoto(file) ? attachmentSubjectLabels[file.about] : file.fileName;
}

/** What somebody hears who does not see the picture. */
export function altOf(file: Shown): string {
  const subject = attachmentSubjectLabels[file.about];
  const what = file.caption === '' ? subject : `${file.caption} (${subject.toLowerCase()})`;
  return `${what}, ${whenText(file)}`;
}

const kinds: Partial<Record<Attachment['mediaType'], string>> = {
  'application/pdf': 'PDF',
  'message/rfc822': 'Message',
  'text/plain': 'Text',
};

export function kindText(file: Pick<Attachment, 'mediaType'>): string {
  return kinds[file.mediaType] ?? 'Photograph';
}
