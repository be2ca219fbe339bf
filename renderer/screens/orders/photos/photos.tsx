import { Panel } from '../../../parts/panel.tsx';
import { PhotoStrip } from '../../../parts/photos/photo-strip.tsx';
import { useOrder } from '../order-screen.tsx';

/** Every photograph and file of the order, whatever it was added for. */
export function Photos() {
  const { order } = useOrder();
  return (
    <Panel id="order-photos" title="Photographs and files">
      <PhotoStrip of={{ orderId: order.card.id }} />
    </Panel>
  );
}
