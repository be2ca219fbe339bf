import { Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { ConsumableDetail } from '../../../shared/contract/stores.ts';
import { mlPerUsFlOz } from '../../../shared/stores.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { today } from '../../parts/days.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { MoneyField } from '../orders/facts/money-field.tsx';
import { type Amount, QuantityFields } from './quantity-fields.tsx';
import { useScanKeepsForm } from './use-scan-keeps-form.ts';

interface ReceiveFormProps {
  detail: ConsumableDetail;
  onDone: (lotIds: readonly string[]) => void;
  onCancel: () => void;
  times: number;
}

/** Books in what came, each container as a lot with a label of its own. */
export function ReceiveForm({ detail, onDone, onCancel, times }: ReceiveFormProps) {
  const { id: consumableId, unit, name } = detail;
  const [amount, setAmount] = useState<Amount>({ quantity: null, unit });
  const [containers, setContainers] = useState<number | null>(1);
  const [number, setNumber] = useState('');
  const [receivedOn, setReceived] = useState(today());
  const [expiresOn, setExpires] = useState('');
  const [costCents, setCost] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const receive = useCommand(api.stores.receive, { onDone: ({ lotIds }) => onDone(lotIds) });
  const keepsForm = useScanKeepsForm();
  const fields = {
    consumableId,
    number: number.trim(),
    receivedOn,
    expiresOn: expiresOn === '' ? null : expiresOn,
    costCents,
    note,
    containers: containers ?? Number.NaN,
    quantity: amount.quantity ?? Number.NaN,
    unit: amount.unit,
  };
  const wrong = inputErrors(contract.stores.receive, fields);
  const errors = tried ? { ...receive.details, ...wrong } : {};
  const isLiquid = unit === 'mL' || unit === 'fl oz';
  return (
    <div onKeyDownCapture={keepsForm}>
      <FormBox
        title={`Receive ${name}`}
        submitLabel="Receive"
        command={receive}
        times={times}
        onCancel={onCancel}
        onSubmit={() => {
          setTried(true);
          if (Object.keys(wrong).length === 0) void receive.run(fields);
        }}
      >
        <QuantityFields
          label="In each container"
          counted={unit}
          value={amount}
          errors={errors}
          {...(isLiquid ? { description: `1 US fl oz is ${mlPerUsFlOz} mL.` } : {})}
          onChange={setAmount}
        />
        <FieldGrid>
          <NumberField
            label="Containers"
            description="Cans or packs; each gets a label of its own."
            required
            value={containers}
            error={errors.containers}
            onChange={setContainers}
          />
          <TextInput
            label="Lot number"
            description="As printed or scanned; empty where none is."
            maxLength={80}
            autoComplete="off"
            value={number}
            error={errors.number}
            onChange={(event) => setNumber(event.currentTarget.value)}
          />
          <TextInput
            label="Use by"
            description="Last day printed on it; empty where it keeps."
            type="date"
            value={expiresOn}
            error={errors.expiresOn}
            onChange={(event) => setExpires(event.currentTarget.value)}
          />
          <TextInput
            label="Came on"
            description="The day it was put on the shelf."
            type="date"
            required
            value={receivedOn}
            error={errors.receivedOn}
            onChange={(event) => setReceived(event.currentTarget.value)}
          />
          <MoneyField
            label="Cost of a container, dollars"
            value={costCents}
            error={errors.costCents}
            onChange={setCost}
          />
          <WideField>
            <Textarea
              label="Note"
              maxLength={1000}
              value={note}
              error={errors.note}
              onChange={(event) => setNote(event.currentTarget.value)}
            />
          </WideField>
        </FieldGrid>
      </FormBox>
    </div>
  );
}
