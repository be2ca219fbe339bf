import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { BenchFrame } from './bench-frame.tsx';
import { BenchView } from './bench-view.tsx';
import { seenOfOrder } from './seen-of-order.ts';
import { useAdviceChange } from './use-advice-change.ts';

/** The bench view of one order. It reads again by itself when the order changes elsewhere. */
export function BenchViewScreen({ orderId }: { orderId: string }) {
  const order = useQuery(orpc.orders.get.queryOptions({ input: { id: orderId } }));
  const scales = useQuery(orpc.scales.list.queryOptions());
  const seen = order.data === undefined ? null : seenOfOrder(order.data);
  const change = useAdviceChange(seen?.advice ?? null);
  if (seen === null || order.data === undefined || scales.data === undefined) {
    const error = order.error ?? scales.error;
    return (
      <BenchFrame title="Bench" back={{ href: '/bench', label: 'Bows' }}>
        {error === null ? (
          <BusyNote />
        ) : (
          <ErrorNote
            error={error}
            onAgain={() => {
              void order.refetch();
              void scales.refetch();
            }}
          />
        )}
      </BenchFrame>
    );
  }
  return (
    <BenchView seen={seen} order={order.data} scales={scales.data} change={change} work={null} />
  );
}
