import { createORPCClient } from '@orpc/client';
import type { ContractRouterClient } from '@orpc/contract';
import { createTanstackQueryUtils } from '@orpc/tanstack-query';
import type { Contract } from '../../shared/contract/index.ts';
import { withDeadline } from './deadline.ts';
import { httpLink } from './http-link.ts';
import { portLink } from './port-link.ts';

const link = window.tillermarkDesktop === undefined ? httpLink() : portLink();

/** Every procedure of the contract, typed. Calls fail after 30 s without an answer. */
export const api: ContractRouterClient<Contract> = createORPCClient(withDeadline(link));

/** The same as query and mutation options: `useQuery(orpc.orders.get.queryOptions({ input }))`. */
export const orpc = createTanstackQueryUtils(api);

/** Names one intent to write. Use {@link useCommand}, which keeps it over retries. */
export function newCommandId(): string {
  return crypto.randomUUID();
}
