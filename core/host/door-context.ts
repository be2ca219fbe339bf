import type { RequestHeadersPluginContext } from '@orpc/server/plugins';
import type { Core } from './core.ts';

/** What both doors hand to a procedure. */
export interface DoorContext extends RequestHeadersPluginContext {
  core: Core;
}
