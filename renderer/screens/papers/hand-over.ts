/** What became of a paper on its way to the printer or the disk. */
export type HandOver =
  | { state: 'opened' }
  | { state: 'saved'; url: string; name: string }
  /** The browser would not open a tab: the person opens the paper with the link. */
  | { state: 'blocked'; url: string; name: string }
  | { state: 'failed'; sentence: string };

/** Long enough for a slow viewer to have read the file. */
const keepUrlMs = 10 * 60_000;

function urlOf(file: File): string {
  const url = URL.createObjectURL(file);
  setTimeout(() => URL.revokeObjectURL(url), keepUrlMs);
  return url;
}

/** A tab opened while the click still counts as one; null where the browser blocks it. */
export function openTab(): Window | null {
  if (window.tillermarkDesktop !== undefined) return null;
  return window.open('about:blank', '_blank');
}

/** Hands a paper to the system viewer, or to the tab that was opened on the click. */
export async function handToViewer(file: File, tab: Window | null): Promise<HandOver> {
  const desktop = window.tillermarkDesktop;
  if (desktop !== undefined) {
    const result = await desktop.openPdf(file.name, await file.arrayBuffer());
    return result.ok ? { state: 'opened' } : { state: 'failed', sentence: result.message };
  }
  const url = urlOf(file);
  if (tab === null || tab.closed) return { state: 'blocked', url, name: file.name };
  tab.location.replace(url);
  return { state: 'opened' };
}

/** Saves under the file's own name, the way the browser saves anything. */
export function saveFile(file: File): HandOver {
  const url = urlOf(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  return { state: 'saved', url, name: file.name };
}
