import { app, dialog, session, shell, type WebContents } from 'electron';
import { isAppUrl } from './app-origin.ts';

const outsideProtocols = ['https:', 'mailto:'];

/** A link the person's own browser or mail program may open. No link carries a password. */
function isOutsideLink(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const url = new URL(text);
  return outsideProtocols.includes(url.protocol) && url.username === '' && url.password === '';
}

function openOutside(url: string): void {
  shell.openExternal(url).catch(() => {
    dialog.showErrorBox('The link did not open', `Type it into your browser: ${url}`);
  });
}

interface Navigation {
  readonly url: string;
  readonly isMainFrame: boolean;
  preventDefault(): void;
}

function stayInside(navigation: Navigation): void {
  // A paper is previewed in a frame of our own page, from a blob of our own page.
  const isOwnBlob = !navigation.isMainFrame && isAppUrl(navigation.url.replace(/^blob:/, ''));
  if (!isAppUrl(navigation.url) && !isOwnBlob) navigation.preventDefault();
}

function guard(contents: WebContents): void {
  contents.on('will-navigate', stayInside);
  contents.on('will-frame-navigate', stayInside);
  contents.on('will-redirect', stayInside);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    if (isOutsideLink(url)) openOutside(url);
    return { action: 'deny' };
  });
}

/** Every page this program ever shows, also one nobody thought of. */
export function setupPageGuards(): void {
  app.on('web-contents-created', (_event, contents) => guard(contents));
}

/** Copying a text on a click, and nothing else: no camera, position or notices. */
const granted = 'clipboard-sanitized-write';

export function setupPermissions(): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((contents, permission, decide) =>
    decide(permission === granted && isAppUrl(contents.getURL())),
  );
  defaultSession.setPermissionCheckHandler(
    (_contents, permission, origin) => permission === granted && isAppUrl(origin),
  );
  defaultSession.setDevicePermissionHandler(() => false);
}
