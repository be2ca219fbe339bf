import { RequestHeadersPlugin } from '@orpc/server/plugins';
import type { StandardRPCHandlerOptions } from '@orpc/server/standard';
import type { DoorContext } from './door-context.ts';
import { toClientError } from './refusals.ts';

/** What both doors do around every call: read the headers, translate what was thrown. */
export function rpcOptions(): StandardRPCHandlerOptions<DoorContext> {
  return {
    plugins: [new RequestHeadersPlugin()],
    clientInterceptors: [
      async ({ context, path, next }) => {
        try {
          return await next();
        } catch (error) {
          throw toClientError(error, path, context.core.log);
        }
      },
    ],
  };
}
