import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { OrderRows } from '../../parts/order-rows.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { TwoColumns } from '../../parts/two-columns.tsx';
import { BowFactsPanel } from './bow-facts-panel.tsx';
import { BowLife } from './bow-life.tsx';
import { bowTitle, markedText } from './bow-text.ts';

/** One bow and its whole life in this shop. */
export function BowScreen({ id }: { id: string }) {
  const query = useQuery(orpc.bows.get.queryOptions({ input: { id } }));
  if (query.data === undefined) {
    return (
      <Page title="Bow">
        {query.error === null ? (
          <BusyNote />
        ) : (
          <ErrorNote error={query.error} onAgain={() => void query.refetch()} />
        )}
      </Page>
    );
  }
  return <Known data={query.data} />;
}

function Owner({ data }: { data: ContractOutputs['bows']['get'] }) {
  const { customerId } = data.bow;
  if (customerId === null) return <span>The shop's own bow</span>;
  return (
    <span>
      Owner: <Link href={`/customers/${customerId}`}>{data.ownerName}</Link>
    </span>
  );
}

function Known({ data }: { data: ContractOutputs['bows']['get'] }) {
  const { bow, orders } = data;
  return (
    <Page title={bowTitle(bow)} actions={<Owner data={data} />}>
      <TwoColumns
        left={
          <>
            <Panel title="Its life here">
              {orders.length === 0 ? (
                <EmptyNote title="Nothing was done to this bow yet">
                  <Link href="/intake">Take in a request</Link> to start.
                </EmptyNote>
              ) : (
                <BowLife marked={markedText(bow)} orders={orders} />
              )}
            </Panel>
            {orders.length === 0 ? null : (
              <Panel title="Orders">
                <OrderRows orders={orders} about={(order) => order.customerName} />
              </Panel>
            )}
          </>
        }
        right={<BowFactsPanel bow={bow} />}
      />
    </Page>
  );
}
