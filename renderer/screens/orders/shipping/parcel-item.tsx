import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Shipment } from '../../../../shared/contract/shipments.ts';
import { api } from '../../../api/client.ts';
import { fullDay, momentText, moneyText } from '../../../parts/days.ts';
import { Facts } from '../../../parts/facts.tsx';
import { PhotoStrip } from '../../../parts/photos/photo-strip.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { AssessmentNote } from './assessment-note.tsx';
import { ParcelForm } from './parcel-form.tsx';
import classes from './shipping.module.css';
import { sizeWords } from './size-words.ts';

function valueWords({ declaredCents, insured }: Shipment): string {
  if (declaredCents === null) return '';
  return `${moneyText(declaredCents)}, ${insured ? 'insured' : 'not insured'}`;
}

function facts(parcel: Shipment): (readonly [string, string])[] {
  return [
    ['Carrier', parcel.carrierName],
    ['Parcel', sizeWords(parcel)],
    ['Declared value', valueWords(parcel)],
    ['Proved by', parcel.valueEvidence],
    ['Tracking', parcel.tracking],
    ['Shipped', parcel.shippedOn === null ? '' : fullDay(parcel.shippedOn)],
    ['Delivered', parcel.deliveredOn === null ? '' : fullDay(parcel.deliveredOn)],
    ['Note', parcel.note],
  ];
}

/** One parcel as it was recorded, with what the carrier's limits made of it then. */
export function ParcelItem({ parcel }: { parcel: Shipment }) {
  const { order, opened, close } = useOrder();
  const [isChanging, setChanging] = useState(false);
  const { direction, struckReason, carrierName } = parcel;
  const asked = direction === 'out' ? opened.shipping : undefined;
  const isEditing = isChanging || asked !== undefined;
  const title = direction === 'out' ? 'Going out' : 'Came in';
  const what = `the parcel ${direction === 'out' ? 'going out' : 'that came in'}, ${carrierName}`;
  if (struckReason !== null) {
    return (
      <li className={orderClasses.item}>
        <span className={orderClasses.struck}>
          {title}: {carrierName}, {sizeWords(parcel)}
        </span>
        <p className={orderClasses.words}>Struck out: {struckReason}</p>
      </li>
    );
  }
  return (
    <li className={`${orderClasses.item} ${classes.parcel}`}>
      {isEditing ? null : (
        <div className={orderClasses.row}>
          <h3 className={classes.subtitle}>{title}</h3>
          <Button variant="default" aria-label={`Change ${what}`} onClick={() => setChanging(true)}>
            Change
          </Button>
        </div>
      )}
      {isEditing ? (
        <ParcelForm
          direction={direction}
          parcel={parcel}
          times={asked?.times ?? 1}
          onDone={() => {
            setChanging(false);
            if (asked !== undefined) close('shipping');
          }}
        />
      ) : (
        <>
          <Facts facts={facts(parcel)} />
          <h4 className={classes.subtitle}>
            {direction === 'out'
              ? 'Photographs that prove the value'
              : 'Photographs of the packaging'}
          </h4>
          <PhotoStrip
            of={{
              orderId: order.card.id,
              shipmentId: parcel.id,
              about: direction === 'out' ? 'value' : 'packaging',
            }}
          />
          {parcel.assessment === null ? null : <AssessmentNote assessment={parcel.assessment} />}
          <p className={orderClasses.quiet}>
            Recorded {momentText(parcel.recordedAt)}, {parcel.personName}
          </p>
          <StrikeOut what={what} record={parcel} fn={api.shipments.strikeOut} />
        </>
      )}
    </li>
  );
}
