import { Button, Checkbox, Textarea, TextInput } from '@mantine/core';
import { Link } from 'wouter';
import { FieldGrid } from '../../parts/fields.tsx';
import { Mark } from '../../parts/mark.tsx';
import { PhotoStrip } from '../../parts/photos/photo-strip.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { SavedForm, TableStep } from './part.tsx';
import classes from './unpacking.module.css';
import { useArrivalPart } from './use-arrival-part.ts';

const title = '1  Box and packaging';

/** When it was opened, how it came, and what the bow looked like coming out of the box. */
export function BoxStep() {
  const { order } = useOrder();
  const part = useArrivalPart();
  const { value, set, errors } = part;
  return (
    <TableStep
      title={title}
      isDone={order.arrival !== null && order.arrival.condition.trim() !== ''}
    >
      <p className={classes.quiet}>
        Photograph the box before and while it is opened. A claim needs the packaging: keep it until
        the bow is home.
      </p>
      <PhotoStrip of={{ orderId: order.card.id, about: 'packaging' }} />
      <SavedForm title={title} saveLabel="Save the box" part={part}>
        <FieldGrid>
          <TextInput
            type="date"
            label="Box opened on"
            required
            value={value.openedOn}
            error={errors.openedOn}
            onChange={(event) => set({ openedOn: event.currentTarget.value })}
          />
          <TextInput
            label="Came by"
            placeholder="Parcel, brought in by hand"
            maxLength={1000}
            autoComplete="off"
            value={value.cameBy}
            error={errors.cameBy}
            onChange={(event) => set({ cameBy: event.currentTarget.value })}
          />
        </FieldGrid>
        <Textarea
          label="Packaging"
          placeholder="Tube or box, padding, what was loose"
          maxLength={1000}
          value={value.packaging}
          error={errors.packaging}
          onChange={(event) => set({ packaging: event.currentTarget.value })}
        />
        <Checkbox
          label="Packaging is damaged"
          checked={value.packagingDamaged}
          onChange={(event) => set({ packagingDamaged: event.currentTarget.checked })}
        />
        {value.packagingDamaged ? (
          <div className={classes.buttons}>
            <Mark kind="attention">
              Keep all of it as it came. Damage to the bow is reported to the carrier in time.
            </Mark>
            <Button
              component={Link}
              href={`/orders/${order.card.id}?open=incidents:damaged-in-transit`}
              variant="default"
            >
              Record damage in transit
            </Button>
          </div>
        ) : null}
        <Checkbox
          label="Packaging is kept"
          checked={value.packagingKept}
          onChange={(event) => set({ packagingKept: event.currentTarget.checked })}
        />
        <Textarea
          label="Condition of the bow as it came out"
          required
          maxLength={2000}
          value={value.condition}
          error={errors.condition}
          onChange={(event) => set({ condition: event.currentTarget.value })}
        />
      </SavedForm>
    </TableStep>
  );
}
