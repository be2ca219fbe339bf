import type { SystemStatus } from '../../shared/contract/system.ts';
import { orpc } from './client.ts';
import { queryClient } from './queries.ts';

/** Another data folder is open: nothing that was read from the one before is shown any more. */
export function showFolder(status: SystemStatus): void {
  queryClient.removeQueries({ predicate: ({ queryKey }) => !isStatus(queryKey) });
  queryClient.setQueryData(orpc.system.status.queryKey(), status);
  history.replaceState(null, '', '/');
}

function isStatus(queryKey: readonly unknown[]): boolean {
  return JSON.stringify(queryKey) === JSON.stringify(orpc.system.status.queryKey());
}
