import { type AttachmentMediaType, attachmentEndings } from '../../../shared/attachments.ts';

/** Longest file name kept, without its ending. */
const longest = 100;

/** Characters that some file system refuses in a name; line ends and the like are never shown. */
const unfit = /[\p{C}<>:"/\\|?*]+/gu;

/** Words as part of a file name on any system: Windows drops dots and spaces at the end. */
export function fileWords(text: string): string {
  const words = text.normalize('NFC').replaceAll(unfit, ' ').replaceAll(/\s+/g, ' ').trim();
  return Array.from(words)
    .slice(0, longest)
    .join('')
    .replace(/^\.+/, '')
    .replace(/[. ]+$/, '');
}

function parts(name: string): { stem: string; ending: string } {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const dot = last.lastIndexOf('.');
  if (dot <= 0) return { stem: last, ending: '' };
  return { stem: last.slice(0, dot), ending: last.slice(dot + 1) };
}

/** A name as a refusal can show it, whatever the sender called the file. */
export function shownName(name: string): string {
  const { stem, ending } = parts(name);
  const end = fileWords(ending);
  return `${fileWords(stem) || 'The file'}${end === '' ? '' : `.${end.slice(0, 10)}`}`;
}

const knownEndings: readonly string[] = Object.values(attachmentEndings).flat();

/**
 * The name kept with a file. Its ending always tells the true kind: a page of HTML that came as
 * text must not open as a page when it is saved again.
 */
export function keptName(name: string, mediaType: AttachmentMediaType): string {
  const { stem, ending } = parts(name);
  const fit = attachmentEndings[mediaType];
  if (fit.includes(ending.toLowerCase())) return `${fileWords(stem) || 'file'}.${ending}`;
  const isKnown = ending === '' || knownEndings.includes(ending.toLowerCase());
  const words = fileWords(isKnown ? stem : `${stem}.${ending}`) || 'file';
  return `${words}.${fit[0]}`;
}
