import { TextInput } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { Lot } from '../../../shared/contract/stores.ts';
import { lotName, quantityText, type StockUnit } from '../../../shared/stores.ts';
import { api } from '../../api/client.ts';
import { type Command, useCommand } from '../../api/command.ts';
import { today } from '../../parts/days.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { MoneyField } from '../orders/facts/money-field.tsx';
import { OrderSelect } from './order-select.tsx';
import { type Amount, QuantityFields } from './quantity-fields.tsx';

export interface LotFormProps {
  lot: Lot;
  unit: StockUnit;
  onDone: (said: string) => void;
  onCancel: () => void;
}

interface AmountWithReason {
  commandId: string;
  lotId: string;
  quantity: number;
  unit: StockUnit;
  reason: string;
}

interface AmountFormProps extends LotFormProps {
  title: string;
  submitLabel: string;
  label: string;
  start: number | null;
  procedure: Parameters<typeof inputErrors>[0];
  command: Command<AmountWithReason, unknown>;
  reasonLabel: string;
  startReason?: string;
  /** More of what the command takes. */
  more?: object;
  children?: ReactNode;
}

/** An amount of one lot and the reason for it. */
function AmountForm(props: AmountFormProps) {
  const { lot, unit, title, command, procedure, more = {} } = props;
  const [amount, setAmount] = useState<Amount>({ quantity: props.start, unit });
  const [reason, setReason] = useState(props.startReason ?? '');
  const [tried, setTried] = useState(false);
  const fields = {
    lotId: lot.id,
    quantity: amount.quantity ?? Number.NaN,
    unit: amount.unit,
    reason: reason.trim(),
    ...more,
  };
  const wrong = inputErrors(procedure, fields);
  const errors = tried ? { ...command.details, ...wrong } : {};
  return (
    <FormBox
      title={title}
      submitLabel={props.submitLabel}
      command={command}
      onCancel={props.onCancel}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void command.run(fields);
      }}
    >
      <QuantityFields
        label={props.label}
        counted={unit}
        value={amount}
        errors={errors}
        description={`The moves say ${quantityText(lot.onHand, unit)}.`}
        onChange={setAmount}
      />
      {props.children}
      <TextInput
        label={props.reasonLabel}
        required
        maxLength={400}
        autoComplete="off"
        value={reason}
        error={errors.reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
    </FormBox>
  );
}

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

interface LotFields {
  number: string;
  receivedOn: string;
  expiresOn: string;
  openedOn: string;
  unitCostCents: number | null;
  note: string;
}

export function EditLotForm({ lot, onDone, onCancel }: LotFormProps) {
  const [value, setValue] = useState<LotFields>({
    number: lot.number,
    receivedOn: lot.receivedOn,
    expiresOn: lot.expiresOn ?? '',
    openedOn: lot.openedOn ?? '',
    unitCostCents: lot.unitCostCents,
    note: lot.note,
  });
  const [tried, setTried] = useState(false);
  const edit = useCommand(api.stores.editLot, { onDone: () => onDone('The lot is changed.') });
  const fields = {
    id: lot.id,
    rowVersion: lot.rowVersion,
    ...value,
    number: value.number.trim(),
    expiresOn: value.expiresOn === '' ? null : value.expiresOn,
    openedOn: value.openedOn === '' ? null : value.openedOn,
  };
  const wrong = inputErrors(contract.stores.editLot, fields);
  const errors = tried ? { ...edit.details, ...wrong } : {};
  const text = (field: 'number' | 'note', label: string, maxLength: number) => (
    <TextInput
      label={label}
      maxLength={maxLength}
      autoComplete="off"
      value={value[field]}
      error={errors[field]}
      onChange={(event) => setValue({ ...value, [field]: event.currentTarget.value })}
    />
  );
  const dayOf = (field: 'receivedOn' | 'expiresOn' | 'openedOn', label: string) => (
    <TextInput
      label={label}
      type="date"
      value={value[field]}
      error={errors[field]}
      onChange={(event) => setValue({ ...value, [field]: event.currentTarget.value })}
    />
  );
  return (
    <FormBox
      title={`Change lot ${lotName(lot)}`}
      submitLabel="Save"
      command={edit}
      onCancel={onCancel}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void edit.run(fields);
      }}
    >
      <FieldGrid>
        {text('number', 'Lot number', 80)}
        {dayOf('receivedOn', 'Came on')}
        {dayOf('expiresOn', 'Use by')}
        {dayOf('openedOn', 'Opened on')}
        <MoneyField
          label="Cost of one, dollars"
          value={value.unitCostCents}
          error={errors.unitCostCents}
          onChange={(unitCostCents) => setValue({ ...value, unitCostCents })}
        />
        {text('note', 'Note', 1000)}
      </FieldGrid>
    </FormBox>
  );
}
