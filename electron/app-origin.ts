import { desktopOrigin } from '../shared/desktop.ts';

/** Whether a URL belongs to our own page. Anything that does not parse does not. */
export function isAppUrl(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const url = new URL(text);
  // URL.origin is "null" for schemes Node does not know.
  return `${url.protocol}//${url.host}` === desktopOrigin;
}
