import { Checkbox, Modal, Select, Stack, TextInput } from '@mantine/core';
import { contract } from '../../../shared/contract/index.ts';
import type { PriceService } from '../../../shared/contract/prices.ts';
import { type Service, service, serviceLabels, services } from '../../../shared/stages.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { omit } from '../../parts/omit.ts';
import { RecordForm } from '../../parts/record-form.tsx';
import { MoneyField } from '../orders/facts/money-field.tsx';

interface Fields {
  name: string;
  service: Service | null;
  priceCents: number | null;
  minutes: number | null;
  taxable: boolean;
  active: boolean;
}

const empty: Fields = {
  name: '',
  service: null,
  priceCents: null,
  minutes: null,
  taxable: true,
  active: true,
};

const given = (fields: Fields) => ({
  ...omit(fields, 'active'),
  priceCents: fields.priceCents ?? 0,
  minutes: fields.minutes ?? 0,
});

interface PriceServiceFormProps {
  opened: boolean;
  /** The line to change; none adds one. */
  line: PriceService | null;
  onClose: () => void;
}

export function PriceServiceForm({ opened, line, onClose }: PriceServiceFormProps) {
  const add = useCommand(api.prices.addService, { onDone: onClose });
  const edit = useCommand(api.prices.editService, { onDone: onClose });
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title={line === null ? 'Add a line' : `Change ${line.name}`}
    >
      <RecordForm<Fields>
        initial={line === null ? empty : line}
        check={(fields) => inputErrors(contract.prices.addService, namesOnly(given(fields)))}
        command={line === null ? add : edit}
        action={line === null ? 'Add the line' : 'Save'}
        onCancel={onClose}
        onSave={(fields) => {
          const input = namesOnly(given(fields));
          if (line === null) void add.run(input);
          else {
            const { id, rowVersion } = line;
            void edit.run({ id, rowVersion, ...input, active: fields.active });
          }
        }}
      >
        {(value, onChange, errors) => (
          <Stack>
            <TextInput
              label="Name"
              description="As the customer reads it on the estimate."
              required
              data-autofocus
              maxLength={160}
              autoComplete="off"
              value={value.name}
              error={errors.name}
              onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
            />
            <Select
              label="Belongs to the service"
              description="Offered on an order that asks for it."
              clearable
              data={services.map((each) => ({ value: each, label: serviceLabels[each] }))}
              value={value.service}
              onChange={(chosen) =>
                onChange({ ...value, service: chosen === null ? null : service.parse(chosen) })
              }
            />
            <MoneyField
              label="Price, dollars"
              value={value.priceCents}
              error={errors.priceCents}
              onChange={(priceCents) => onChange({ ...value, priceCents })}
            />
            <NumberField
              label="Time it usually takes, minutes"
              unit="min"
              value={value.minutes}
              error={errors.minutes}
              onChange={(minutes) => onChange({ ...value, minutes })}
            />
            <Checkbox
              label="Taxed"
              checked={value.taxable}
              onChange={(event) => onChange({ ...value, taxable: event.currentTarget.checked })}
            />
            {line === null ? null : (
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

/** Only what the command takes, whatever else the record carries. */
function namesOnly({ name, service, priceCents, minutes, taxable }: ReturnType<typeof given>) {
  return { name, service, priceCents, minutes, taxable };
}
