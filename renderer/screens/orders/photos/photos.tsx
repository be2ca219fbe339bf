import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../../api/client.ts';
import { PhotoStrip } from '../../../parts/photos/photo-strip.tsx';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { photosState } from '../section-states.ts';

/** Every photograph and file of the order, whatever it was added for. */
export function Photos() {
  const orderId = useOrder().order.card.id;
  const files = useQuery(orpc.attachments.list.queryOptions({ input: { orderId } }));
  const counted = files.data?.filter(({ struckReason }) => struckReason === null).length;
  return (
    <OrderSection
      place="photos"
      title="Photographs and files"
      state={files.isError ? 'could not be read' : photosState(counted)}
    >
      <PhotoStrip of={{ orderId }} />
    </OrderSection>
  );
}
