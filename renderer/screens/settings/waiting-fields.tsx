import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { daysFrom, daysList } from './days-list.ts';
import type { ShopFields } from './shop-fields-form.tsx';
import classes from './waiting-fields.module.css';

interface WaitingFieldsProps {
  value: ShopFields;
  onChange: (value: ShopFields) => void;
  errors: Record<string, string>;
}

/** A single bad day of the ladder is reported under its place in the list. */
function ladderError(errors: Record<string, string>): string | undefined {
  if (errors.reminderDays !== undefined) return errors.reminderDays;
  const one = Object.keys(errors).some((path) => path.startsWith('reminderDays.'));
  return one ? 'Write whole days from 1 to 365, like 3, 10, 21.' : undefined;
}

/** When a customer is reminded, and from when on a bow that stays costs a fee or is unclaimed. */
export function WaitingFields({ value, onChange, errors }: WaitingFieldsProps) {
  const [ladder, setLadder] = useState(daysList(value.reminderDays));
  const days = (key: 'storageFeeDays' | 'abandonedDays', label: string, description: string) => (
    <NumberField
      label={label}
      description={description}
      required
      value={value[key]}
      error={errors[key]}
      onChange={(number) => onChange({ ...value, [key]: number ?? Number.NaN })}
    />
  );
  return (
    <FieldGrid>
      <WideField>
        <TextInput
          label="Remind after, days"
          description="Up to six, each later than the one before: 3, 10, 21."
          required
          autoComplete="off"
          maxLength={60}
          value={ladder}
          error={ladderError(errors)}
          onChange={(event) => {
            setLadder(event.currentTarget.value);
            onChange({ ...value, reminderDays: daysFrom(event.currentTarget.value) });
          }}
        />
      </WideField>
      {days('storageFeeDays', 'Storage fee after, days', 'On hold for the customer.')}
      {days('abandonedDays', 'Unclaimed after, days', 'On hold; 30 at least.')}
      <WideField>
        <p className={classes.caution}>
          These days only make reminders. Whether a fee may be charged, and what may be done with a
          bow that nobody claims, your own terms and local law decide.
        </p>
      </WideField>
    </FieldGrid>
  );
}
