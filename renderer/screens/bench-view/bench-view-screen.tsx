import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { BenchFrame } from './bench-frame.tsx';
import { BenchView } from './bench-view.tsx';
import { seenOfBench } from './seen-of-bench.ts';
import { useAdviceChange } from './use-advice-change.ts';

/** The bench view of one order. It reads again by itself when the order changes elsewhere. */
export function BenchViewScreen({ orderId }: { orderId: string }) {
  const view = useQuery(orpc.bench.get.queryOptions({ input: { orderId } }));
  const order = useQuery(orpc.orders.get.queryOptions({ input: { id: orderId } }));
  const scales = useQuery(orpc.scales.list.queryOptions());
  const change = useAdviceChange(view.data?.advice ?? null);
  if (view.data === undefined || order.data === undefined || scales.data === undefined) {
    const error = view.error ?? order.error ?? scales.error;
    return (
      <BenchFrame title="Bench" back={{ href: '/bench', label: 'Bows' }}>
        {error === null ? (
          <BusyNote />
        ) : (
          <ErrorNote
            error={error}
            onAgain={() => {
              for (const query of [view, order, scales]) void query.refetch();
            }}
          />
        )}
      </BenchFrame>
    );
  }
  return (
    <BenchView
      view={view.data}
      seen={seenOfBench(view.data, order.data.card)}
      order={order.data}
      scales={scales.data}
      change={change}
    />
  );
}
