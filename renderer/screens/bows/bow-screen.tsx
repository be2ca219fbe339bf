import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { OrderRows } from '../../parts/order-rows.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { PhotoStrip } from '../../parts/photos/photo-strip.tsx';
import { TwoColumns } from '../../parts/two-columns.tsx';
import { ChangesPanel } from '../../parts/undo/changes-panel.tsx';
import { BowFactsPanel } from './bow-facts-panel.tsx';
import { BowLife } from './bow-life.tsx';
import { bowTitle, markedText } from './bow-text.ts';
import { GeometryPanel } from './geometry/geometry-panel.tsx';
import { EveryWeighing } from './life/every-weighing.tsx';
import { LifeList } from './life/life-list.tsx';
import { TakenOff } from './life/taken-off.tsx';
import { LimbSetsPanel } from './limb-sets/limb-sets-panel.tsx';

/** One bow and its whole life in this shop. */
export function BowScreen({ id }: { id: string }) {
  const query = useQuery(orpc.bows.life.queryOptions({ input: { id } }));
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

type Life = ContractOutputs['bows']['life'];

function Owner({ data }: { data: Life }) {
  const { customerId } = data.bow;
  if (customerId === null) return <span>The shop's own bow</span>;
  return (
    <span>
      Owner: <Link href={`/customers/${customerId}`}>{data.ownerName}</Link>
    </span>
  );
}

function Known({ data }: { data: Life }) {
  const { bow, orders, limbSets, geometry, weights, events, lifetime, glassLeft } = data;
  return (
    <Page
      title={bowTitle(bow)}
      actions={
        <>
          <Owner data={data} />
          <Button component={Link} href={`/weight-bench/bow/${bow.id}`} variant="default">
            What-if at the weight bench
          </Button>
        </>
      }
    >
      <TwoColumns
        left={
          <>
            <Panel title="Weights">
              {orders.length === 0 && events.length === 0 ? (
                <EmptyNote title="Nothing was done to this bow yet">
                  <Link href="/intake">Take in a request</Link> to start.
                </EmptyNote>
              ) : (
                <>
                  <BowLife marked={markedText(bow)} orders={orders} />
                  <EveryWeighing weights={weights} />
                </>
              )}
            </Panel>
            {orders.length === 0 ? null : (
              <Panel title="Orders">
                <OrderRows orders={orders} about={(order) => order.customerName} />
              </Panel>
            )}
            <GeometryPanel bowId={bow.id} limbSets={limbSets} versions={geometry} />
            <Panel title="Taken off in its life">
              <TakenOff lifetime={lifetime} glassLeft={glassLeft} />
            </Panel>
            <Panel title="Photographs and files">
              <PhotoStrip of={{ bowId: bow.id }} />
            </Panel>
            {events.length === 0 ? null : (
              <Panel title="Its life here">
                <LifeList events={events} />
              </Panel>
            )}
          </>
        }
        right={
          <>
            <BowFactsPanel bow={bow} />
            <LimbSetsPanel bow={bow} limbSets={limbSets} />
            <ChangesPanel of={{ bowId: bow.id }} />
          </>
        }
      />
    </Page>
  );
}
