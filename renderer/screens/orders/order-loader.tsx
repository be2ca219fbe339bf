import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { OrderScreenProvider } from './order-screen.tsx';

interface OrderLoaderProps {
  id: string;
  /** Of the page while the order is read, or could not be. */
  title: string;
  children: (order: OrderDetail) => ReactNode;
}

/** Reads one order for a page about it, and says how that goes. */
export function OrderLoader({ id, title, children }: OrderLoaderProps) {
  const query = useQuery(orpc.orders.get.queryOptions({ input: { id } }));
  if (query.data === undefined) {
    return (
      <Page title={title}>
        {query.isError ? (
          <ErrorNote
            error={query.error}
            onAgain={() => void query.refetch()}
            busy={query.isFetching}
          />
        ) : (
          <BusyNote>Reading the order ...</BusyNote>
        )}
      </Page>
    );
  }
  return (
    <OrderScreenProvider key={id} order={query.data}>
      {children(query.data)}
    </OrderScreenProvider>
  );
}
