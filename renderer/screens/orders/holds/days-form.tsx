import { TextInput } from '@mantine/core';
import { useState } from 'react';
import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { api } from '../../../api/client.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

interface DayFieldProps {
  label: string;
  value: string;
  error: string | undefined;
  onChange: (day: string) => void;
}

function DayField({ label, value, error, onChange }: DayFieldProps) {
  return (
    <TextInput
      type="date"
      label={label}
      value={value}
      error={error}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}

/** Sets the days of a hold by hand; an emptied day is not kept. */
export function DaysForm({ hold, onDone }: { hold: HoldDetail; onDone: () => void }) {
  const { card } = useOrder().order;
  const [remindOn, setRemindOn] = useState(hold.remindOn ?? '');
  const [storageFeeOn, setStorageFeeOn] = useState(hold.storageFeeOn ?? '');
  const [abandonedOn, setAbandonedOn] = useState(hold.abandonedOn ?? '');
  const command = useOrderCommand(api.orders.changeHold, onDone);
  const { details } = command;
  return (
    <FormBox
      title="Change the days"
      submitLabel="Keep these days"
      command={command}
      onCancel={onDone}
      onSubmit={() =>
        void command.run({
          id: card.id,
          rowVersion: card.rowVersion,
          remindOn: remindOn || null,
          storageFeeOn: storageFeeOn || null,
          abandonedOn: abandonedOn || null,
        })
      }
    >
      <FieldGrid>
        <DayField
          label="Remind on"
          value={remindOn}
          error={details.remindOn}
          onChange={setRemindOn}
        />
        <DayField
          label="Storage fee from"
          value={storageFeeOn}
          error={details.storageFeeOn}
          onChange={setStorageFeeOn}
        />
        <DayField
          label="Unclaimed from"
          value={abandonedOn}
          error={details.abandonedOn}
          onChange={setAbandonedOn}
        />
      </FieldGrid>
    </FormBox>
  );
}
