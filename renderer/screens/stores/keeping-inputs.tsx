import { Checkbox, Group, Stack, Textarea } from '@mantine/core';
import { hazardCaution, hazardLabels, hazards, whoDecides } from '../../../shared/hazards.ts';
import { NumberField } from '../../parts/number-field.tsx';
import type { ConsumableInputsProps } from './consumable-fields.ts';

/** How long it keeps, what its safety data sheet warns of, and a note. */
export function KeepingAndHazards({ value, onChange, errors }: ConsumableInputsProps) {
  return (
    <Stack>
      <NumberField
        label="Keeps once opened, days"
        description="Empty where opening changes nothing."
        value={value.openedDays}
        error={errors.openedDays}
        onChange={(openedDays) => onChange({ ...value, openedDays })}
      />
      <Checkbox.Group
        label="Hazards its safety data sheet names"
        value={value.hazards}
        onChange={(chosen) =>
          onChange({ ...value, hazards: hazards.filter((each) => chosen.includes(each)) })
        }
      >
        <Group gap="xs" mt={4} style={{ flexDirection: 'column', alignItems: 'start' }}>
          {hazards.map((each) => (
            <Checkbox
              key={each}
              value={each}
              label={hazardLabels[each]}
              description={hazardCaution[each]}
            />
          ))}
        </Group>
        <p style={{ margin: '12px 0 0' }}>{whoDecides}</p>
      </Checkbox.Group>
      <Textarea
        label="Note"
        maxLength={2000}
        value={value.note}
        error={errors.note}
        onChange={(event) => onChange({ ...value, note: event.currentTarget.value })}
      />
    </Stack>
  );
}
