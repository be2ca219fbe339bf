import { readFile } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';
import { protocol } from 'electron';
import { securityHeaders } from '../core/host/security-headers.ts';
import { isAppUrl } from './app-origin.ts';
import { programFile } from './program-files.ts';

const contentTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
  '.txt': 'text/plain; charset=utf-8',
};

const appScheme = 'tillermark';

/** Before the app is ready: afterwards the scheme stays a second-class one without an origin. */
export function setupScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

function answerWith(status: number, body: BodyInit, type: string): Response {
  return new Response(body, { status, headers: { ...securityHeaders, 'content-type': type } });
}

function refuse(status: number, sentence: string): Response {
  return answerWith(status, sentence, 'text/plain; charset=utf-8');
}

/** The file inside `folder` a URL path names, or null where it points outside or is malformed. */
function fileInside(folder: string, path: string): string | null {
  let plain: string;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return null;
  }
  if (/[\\\0:]/.test(plain)) return null;
  const file = resolve(join(folder, plain));
  return file === folder || file.startsWith(folder + sep) ? file : null;
}

async function read(file: string): Promise<Response | null> {
  const type = contentTypes[extname(file).toLowerCase()] ?? 'application/octet-stream';
  try {
    return answerWith(200, new Uint8Array(await readFile(file)), type);
  } catch {
    return null;
  }
}

/** Serves the built page, and nothing outside its folder. */
async function serve(request: Request, folder: string): Promise<Response> {
  if (!isAppUrl(request.url)) return refuse(403, 'This address is not served here.');
  if (request.method !== 'GET') return refuse(405, 'Only reading is served here.');
  const { pathname } = new URL(request.url);
  const file = fileInside(folder, pathname);
  if (file === null) return refuse(403, 'This address is not served here.');
  // The page keeps its own addresses: one without an extension is a screen, not a file.
  const wanted = extname(file) === '' || file === folder ? join(folder, 'index.html') : file;
  return (await read(wanted)) ?? refuse(404, 'There is no such file.');
}

export function setupProtocol(): void {
  const folder = resolve(programFile('renderer'));
  protocol.handle(appScheme, (request) => serve(request, folder));
}
