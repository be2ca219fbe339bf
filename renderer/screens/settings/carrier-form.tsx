import { Checkbox, Modal, Stack, TextInput } from '@mantine/core';
import type { Carrier } from '../../../shared/contract/carriers.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { carrierInput, fieldsOfCarrier, newCarrier } from './carrier-fields.ts';
import { AcceptedInputs, MeasuringInputs, SurchargeList } from './carrier-inputs.tsx';

interface CarrierFormProps {
  opened: boolean;
  /** The carrier to change; none adds one. */
  carrier: Carrier | null;
  onClose: () => void;
}

/** Every figure of one carrier, with the day it was looked up. */
export function CarrierForm({ opened, carrier, onClose }: CarrierFormProps) {
  const add = useCommand(api.carriers.add, { onDone: onClose });
  const edit = useCommand(api.carriers.edit, { onDone: onClose });
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      size="xl"
      title={carrier === null ? 'Add a carrier' : `Change ${carrier.name}`}
    >
      <RecordForm
        initial={carrier === null ? newCarrier() : fieldsOfCarrier(carrier)}
        check={(fields) => inputErrors(contract.carriers.add, carrierInput(fields))}
        command={carrier === null ? add : edit}
        action={carrier === null ? 'Add the carrier' : 'Save'}
        onCancel={onClose}
        onSave={(fields) => {
          const given = carrierInput(fields);
          if (carrier === null) void add.run(given);
          else {
            const { id, rowVersion } = carrier;
            void edit.run({ id, rowVersion, ...given, active: fields.active });
          }
        }}
      >
        {(value, onChange, errors) => (
          <Stack>
            <FieldGrid>
              <TextInput
                label="Name"
                description="Carrier and service, as you call it."
                required
                data-autofocus
                maxLength={120}
                autoComplete="off"
                value={value.name}
                error={errors['profile.name'] ?? errors.name}
                onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
              />
              <TextInput
                type="date"
                label="Figures looked up on"
                description="The carrier's own guide decides; it changes every year."
                required
                value={value.asOf}
                error={errors['profile.asOf']}
                onChange={(event) => onChange({ ...value, asOf: event.currentTarget.value })}
              />
              <NumberField
                label="Days to claim damage or loss"
                description="By the carrier's terms; 60 until looked up."
                required
                value={value.claimDays}
                error={errors.claimDays}
                onChange={(claimDays) => onChange({ ...value, claimDays })}
              />
            </FieldGrid>
            <AcceptedInputs value={value} onChange={onChange} errors={errors} />
            <MeasuringInputs value={value} onChange={onChange} errors={errors} />
            <SurchargeList value={value} onChange={onChange} errors={errors} />
            {carrier === null ? null : (
              <Checkbox
                label="In use"
                checked={value.active}
                onChange={(event) => onChange({ ...value, active: event.currentTarget.checked })}
              />
            )}
          </Stack>
        )}
      </RecordForm>
    </Modal>
  );
}
