import type { RequestHeadersPluginContext } from '@orpc/server/plugins';
import type { ShopContext } from '../storage/context.ts';
import type { Core } from './core.ts';

/** What both doors hand to a procedure. */
export interface DoorContext extends RequestHeadersPluginContext {
  core: Core;
}

/** What a procedure sees once the caller is known. */
export interface CallContext extends DoorContext {
  device: string;
  /** @throws ShopError NOT_SIGNED_ON where nobody has said who is working. */
  signedOn(): ShopContext;
}
