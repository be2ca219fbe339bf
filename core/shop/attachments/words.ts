import type { AttachmentRow } from '../../storage/tables.ts';

/** How history and refusals call a file: by its caption, else by its name. */
export function nameFor(row: Pick<AttachmentRow, 'caption' | 'file_name' | 'width_px'>): string {
  const kind = row.width_px === null ? 'file' : 'photograph';
  return `${kind} ${row.caption === '' ? row.file_name : `"${row.caption}"`}`;
}
