import { QueryClient } from '@tanstack/react-query';

/** The program is on this machine: being offline says nothing, and a retry hides the reason. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: { networkMode: 'always', retry: false, staleTime: 30_000 },
    mutations: { networkMode: 'always', retry: false },
  },
});
