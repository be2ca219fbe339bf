import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import { lotName } from '../../../shared/stores.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { MoneyField } from '../orders/facts/money-field.tsx';
import type { LotFormProps } from './lot-amount-form.tsx';
import { useScanKeepsForm } from './use-scan-keeps-form.ts';

interface LotFields {
  number: string;
  receivedOn: string;
  expiresOn: string;
  openedOn: string;
  costCents: number | null;
  note: string;
}

export function EditLotForm({ lot, onDone, onCancel }: LotFormProps) {
  const [value, setValue] = useState<LotFields>({
    number: lot.number,
    receivedOn: lot.receivedOn,
    expiresOn: lot.expiresOn ?? '',
    openedOn: lot.openedOn ?? '',
    costCents: lot.costCents,
    note: lot.note,
  });
  const [tried, setTried] = useState(false);
  const keepsForm = useScanKeepsForm();
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
    <div onKeyDownCapture={keepsForm}>
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
            label="Cost of the container, dollars"
            value={value.costCents}
            error={errors.costCents}
            onChange={(costCents) => setValue({ ...value, costCents })}
          />
          {text('note', 'Note', 1000)}
        </FieldGrid>
      </FormBox>
    </div>
  );
}
