import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import { lotName, quantityText } from '../../../shared/stores.ts';
import { api } from '../../api/client.ts';
import { type Command, useCommand } from '../../api/command.ts';
import { today } from '../../parts/days.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { AmountForm, type AmountWithReason, type LotFormProps } from './lot-amount-form.tsx';
import { OrderSelect } from './order-select.tsx';

export function CountForm(props: LotFormProps) {
  const { lot, unit, onDone } = props;
  const count = useCommand(api.stores.count, {
    onDone: ({ difference, onHand }) => {
      const said = difference === 0 ? 'as the moves say' : `${quantityText(difference, unit)} off`;
      onDone(`Counted lot ${lotName(lot)}: ${quantityText(onHand, unit)}, ${said}.`);
    },
  });
  return (
    <AmountForm
      {...props}
      form="count"
      title={`Count lot ${lotName(lot)}`}
      submitLabel="Write the count"
      label="On the shelf"
      start={null}
      procedure={contract.stores.count}
      command={count}
      reasonLabel="Why it was counted, or what explains the difference"
    />
  );
}

export function DiscardForm(props: LotFormProps) {
  const { lot, unit, onDone } = props;
  const discard = useCommand(api.stores.discard, {
    onDone: ({ onHand }) =>
      onDone(`Discarded. Lot ${lotName(lot)} has ${quantityText(onHand, unit)} left.`),
  });
  return (
    <AmountForm
      {...props}
      form="discard"
      title={`Discard from lot ${lotName(lot)}`}
      submitLabel="Discard"
      label="How much"
      start={lot.onHand}
      procedure={contract.stores.discard}
      command={discard}
      reasonLabel="Why"
      startReason={lot.expired ? 'expired' : ''}
    />
  );
}

export function BookBackForm(props: LotFormProps) {
  const { lot, unit, onDone } = props;
  const [orderId, setOrder] = useState<string | null>(null);
  const back = useCommand(api.stores.bookBack, {
    onDone: ({ onHand }) =>
      onDone(`Booked back. Lot ${lotName(lot)} has ${quantityText(onHand, unit)}.`),
  });
  // The order is no part of the fields the amount form fills in itself.
  const command = back as Command<AmountWithReason, unknown>;
  return (
    <AmountForm
      {...props}
      form="back"
      onOrder={setOrder}
      title={`Book back into lot ${lotName(lot)}`}
      submitLabel="Book back"
      label="How much came back"
      start={null}
      procedure={contract.stores.bookBack}
      command={command}
      reasonLabel="Why"
      startReason="not used"
      more={{ orderId }}
    >
      <OrderSelect
        value={orderId}
        description="The one it had been issued to."
        error={back.details.orderId}
        onChange={setOrder}
      />
    </AmountForm>
  );
}

export function OpenForm({ lot, onDone, onCancel }: LotFormProps) {
  const [openedOn, setOpened] = useState(today());
  const open = useCommand(api.stores.openLot, {
    onDone: () => onDone(`Lot ${lotName(lot)} is open.`),
  });
  return (
    <FormBox
      title={`Open lot ${lotName(lot)}`}
      submitLabel="It is open"
      command={open}
      onCancel={onCancel}
      onSubmit={() => void open.run({ id: lot.id, rowVersion: lot.rowVersion, openedOn })}
    >
      <TextInput
        label="Opened on"
        description="What keeps a shorter time once opened counts from this day."
        type="date"
        required
        value={openedOn}
        error={open.details.openedOn}
        onChange={(event) => setOpened(event.currentTarget.value)}
      />
    </FormBox>
  );
}
