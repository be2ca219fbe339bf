import { type ClientContext, type ClientLink, ORPCError } from '@orpc/client';
import { RPCLink } from '@orpc/client/fetch';
import { NoAnswer } from './errors.ts';
import { callHeaders } from './headers.ts';
import { session } from './session.ts';

/** The door over HTTP, as a browser without the desktop window uses it. */
export function httpLink(): ClientLink<ClientContext> {
  return new RPCLink<ClientContext>({
    url: `${location.origin}/rpc`,
    headers: () => ({ ...callHeaders(), authorization: `Bearer ${session().token}` }),
    fetch: async (request, init) => {
      const response = await fetch(request, init).catch((cause: unknown) => {
        throw new NoAnswer('fetch failed', { cause });
      });
      await throwPlainRefusal(response);
      return response;
    },
  });
}

/** The door itself answers in plain text, before any procedure is reached. */
async function throwPlainRefusal(response: Response): Promise<void> {
  const type = response.headers.get('content-type') ?? '';
  if (response.ok || !type.startsWith('text/plain')) return;
  throw new ORPCError('DOOR', { status: response.status, message: await response.text() });
}
