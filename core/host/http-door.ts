import { timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { fileURLToPath } from 'node:url';
import { RPCHandler } from '@orpc/server/node';
import sirv from 'sirv';
import { refuseLargeBody } from './body-limit.ts';
import type { Core } from './core.ts';
import { router } from './router.ts';
import { rpcOptions } from './rpc-options.ts';
import { securityHeaders } from './security-headers.ts';
import { wholeAnswer } from './whole-answer.ts';

const builtRenderer = fileURLToPath(new URL('../../dist/renderer', import.meta.url));

export interface HttpDoorOptions {
  /** 0 takes any free port. */
  port: number;
  /** Every call carries it as a bearer token: cookies would be shared by all ports of this machine. */
  token: string;
  renderer?: string;
}

export interface HttpDoor {
  url: string;
  port: number;
  close(): Promise<void>;
}

function sameToken(given: string, token: string): boolean {
  const a = Buffer.from(given);
  const b = Buffer.from(token);
  return a.length === b.length && timingSafeEqual(a, b);
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', connection: 'close' });
  response.end(sentence);
}

/** Only pages of this very host and port may ask: a rebound name or a foreign page may not. */
function isForeign(request: IncomingMessage, port: number): boolean {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = request.headers;
  if (host === undefined || !hosts.includes(host)) return true;
  return origin !== undefined && !hosts.map((name) => `http://${name}`).includes(origin);
}

/** Serves the built renderer and the contract on the loopback address only. */
export async function openHttpDoor(core: Core, options: HttpDoorOptions): Promise<HttpDoor> {
  const rpc = new RPCHandler(router, {
    ...rpcOptions(),
    rootInterceptors: [wholeAnswer],
    interceptors: [refuseLargeBody],
  });
  const files = sirv(options.renderer ?? builtRenderer, { single: true, dev: false, etag: true });
  let port = options.port;

  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    if (isForeign(request, port)) return refuse(response, 403, 'This address is not served here.');
    if (!(request.url ?? '').startsWith('/rpc/')) {
      // A file that an update took away in the meantime fails this answer, not the program.
      response.on('pipe', (file) => file.once('error', () => response.destroy()));
      return files(request, response);
    }
    const given = request.headers.authorization?.replace(/^Bearer /, '') ?? '';
    if (!sameToken(given, options.token)) {
      return refuse(response, 401, 'Open Tillermark with the address it printed when it started.');
    }
    rpc
      .handle(request, response, { prefix: '/rpc', context: { core } })
      .then(({ matched }) => {
        if (!matched) refuse(response, 404, 'There is no such procedure.');
      })
      .catch((error: unknown) => {
        core.log.error({ err: error }, 'http door');
        if (!response.headersSent) refuse(response, 500, 'The request could not be answered.');
        else response.destroy();
      });
  });
  await listen(server, options.port);
  const address = server.address();
  if (address !== null && typeof address === 'object') port = address.port;
  return {
    url: `http://127.0.0.1:${port}/`,
    port,
    close: () => shut(server),
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
}

function shut(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
