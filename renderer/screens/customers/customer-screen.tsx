import { Button } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { Link, useLocation } from 'wouter';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { OrderRows } from '../../parts/order-rows.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { LinkRow, Rows } from '../../parts/rows.tsx';
import { TwoColumns } from '../../parts/two-columns.tsx';
import { ChangesPanel } from '../../parts/undo/changes-panel.tsx';
import { AddBow } from '../bows/add-bow.tsx';
import { bowTitle, markedText } from '../bows/bow-text.ts';
import { CustomerFactsPanel } from './customer-facts-panel.tsx';

/** One customer: who, which bows, which orders. */
export function CustomerScreen({ id }: { id: string }) {
  const query = useQuery(orpc.customers.get.queryOptions({ input: { id } }));
  if (query.data === undefined) {
    return (
      <Page title="Customer">
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

function Known({ data }: { data: ContractOutputs['customers']['get'] }) {
  const { customer, bows, orders } = data;
  const [, go] = useLocation();
  const who = useWho();
  const [adding, add] = useDisclosure(false);
  return (
    <Page title={customer.name} actions={<Link href="/customers">All customers</Link>}>
      <TwoColumns
        left={
          <>
            <Panel title="Orders">
              {orders.length === 0 ? (
                <EmptyNote title="No orders yet">
                  <Link href="/intake">Take in a request</Link>
                </EmptyNote>
              ) : (
                <OrderRows orders={orders} about={(order) => order.bowLine} />
              )}
            </Panel>
            <Panel
              title="Bows"
              actions={
                <Button variant="default" onClick={add.open}>
                  Add a bow
                </Button>
              }
            >
              {bows.length === 0 ? (
                <EmptyNote title="No bows yet">Add the first one.</EmptyNote>
              ) : (
                <Rows label="Bows">
                  {bows.map((bow) => (
                    <LinkRow
                      key={bow.id}
                      href={`/bows/${bow.id}`}
                      title={bowTitle(bow)}
                      line={markedText(bow)}
                      side={bow.serial}
                    />
                  ))}
                </Rows>
              )}
            </Panel>
          </>
        }
        right={
          <>
            <CustomerFactsPanel customer={customer} mayEdit={who?.role !== 'bench'} />
            <ChangesPanel of={{ customerId: customer.id }} />
          </>
        }
      />
      <AddBow
        opened={adding}
        onClose={add.close}
        customerId={customer.id}
        onAdded={(bowId) => go(`/bows/${bowId}`)}
      />
    </Page>
  );
}
