import { Button, Checkbox } from '@mantine/core';
import { useState } from 'react';
import { lookedFor } from '../../../shared/arrival.ts';
import { PhotoStrip } from '../../parts/photos/photo-strip.tsx';
import { FindingList } from '../orders/findings/finding-list.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { SavedForm, TableStep } from './part.tsx';
import { StopSign } from './stop-sign.tsx';
import classes from './unpacking.module.css';
import { useArrivalPart } from './use-arrival-part.ts';

const title = '4  Look it over';

/** Every place a bow fails at, looked at unstrung; what is found is written down here. */
export function LookStep() {
  const { order } = useOrder();
  const part = useArrivalPart();
  const [isAdding, setAdding] = useState(false);
  return (
    <TableStep title={title} isDone={order.arrival?.lookedOver === true}>
      <p className={classes.quiet}>
        Unstrung, in raking light. Look for {lookedFor.slice(0, -1).join(', ')} and{' '}
        {lookedFor.at(-1)}. A crack or a glue line that opens is a stop finding.
      </p>
      <StopSign />
      <PhotoStrip of={{ orderId: order.card.id, about: 'bow' }} />
      <FindingList isAdding={isAdding} onAdded={() => setAdding(false)} />
      {isAdding ? null : (
        <div className={classes.buttons}>
          <Button h={56} size="md" variant="default" onClick={() => setAdding(true)}>
            Add a finding
          </Button>
        </div>
      )}
      <SavedForm title={title} saveLabel="Save that it was looked over" part={part}>
        <Checkbox
          label="All of these were looked for"
          checked={part.value.lookedOver}
          onChange={(event) => part.set({ lookedOver: event.currentTarget.checked })}
        />
      </SavedForm>
    </TableStep>
  );
}
