import { Button } from '@mantine/core';
import { useState } from 'react';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { shippingState } from '../section-states.ts';
import { ParcelForm } from './parcel-form.tsx';
import { ParcelItem } from './parcel-item.tsx';

function Cautions({ isStopped }: { isStopped: boolean }) {
  if (isStopped) {
    return (
      <p role="alert">
        <Mark kind="stop">
          DO NOT STRING OR DRAW. The return tag says so: tie it to the bow, where it is seen first.
        </Mark>
      </p>
    );
  }
  return (
    <ul className={orderClasses.caution} aria-label="Before the box is closed">
      <li>Unstrung, limbs padded, tips clear of both ends of the box.</li>
      <li>Bolts, pins and small parts in a bag of their own, tied to the riser.</li>
      <li>Photographs of bow and packing before it is closed: they prove a claim.</li>
    </ul>
  );
}

/** The box: its sizes against the carrier's limits, its value, its tracking. */
export function Shipping() {
  const { order, opened, close } = useOrder();
  const { card, shipments } = order;
  const [adding, setAdding] = useState<'in' | 'out' | null>(null);
  const opening = opened.shipping;
  const live = shipments.find((each) => each.direction === 'out' && each.struckReason === null);
  const cameIn = shipments.some((each) => each.direction === 'in' && each.struckReason === null);
  const form = adding ?? (opening !== undefined && live === undefined ? 'out' : null);
  const done = () => {
    setAdding(null);
    close('shipping');
  };
  return (
    <OrderSection
      place="shipping"
      title="Packing and shipping"
      state={shippingState(order)}
      isBusy={form !== null}
    >
      <Cautions isStopped={card.openStops > 0 || card.goingHome === 'broken'} />
      {form === null ? (
        <div className={orderClasses.buttons} style={{ marginBlock: 12 }}>
          {live === undefined ? (
            <Button variant="default" onClick={() => setAdding('out')}>
              Measure and record the parcel
            </Button>
          ) : null}
          {cameIn ? null : (
            <Button variant="default" onClick={() => setAdding('in')}>
              Record the parcel it came in
            </Button>
          )}
        </div>
      ) : (
        <ParcelForm
          key={form}
          direction={form}
          parcel={null}
          times={opening?.times ?? 1}
          onDone={done}
        />
      )}
      {shipments.length === 0 && form === null ? (
        <p className={orderClasses.quiet}>No parcel recorded yet.</p>
      ) : null}
      <ul className={orderClasses.list}>
        {shipments.map((parcel) => (
          <ParcelItem key={parcel.id} parcel={parcel} />
        ))}
      </ul>
    </OrderSection>
  );
}
