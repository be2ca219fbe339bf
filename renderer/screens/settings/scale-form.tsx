import { Checkbox, Modal, Stack, TextInput } from '@mantine/core';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { omit } from '../../parts/omit.ts';
import { RecordForm } from '../../parts/record-form.tsx';
import type { Scale } from './scales.tsx';

interface Fields {
  name: string;
  resolutionLbf: number | null;
  active: boolean;
}

interface ScaleFormProps {
  opened: boolean;
  /** The scale to change; none adds one. */
  scale: Scale | null;
  onClose: () => void;
}

export function ScaleForm({ opened, scale, onClose }: ScaleFormProps) {
  const add = useCommand(api.scales.add, { onDone: onClose });
  const edit = useCommand(api.scales.edit, { onDone: onClose });
  const initial: Fields =
    scale === null
      ? { name: '', resolutionLbf: 0.1, active: true }
      : { name: scale.name, resolutionLbf: scale.resolutionLbf, active: scale.active };
  const save = ({ resolutionLbf, ...fields }: Fields) => {
    if (resolutionLbf === null) return undefined;
    const given = { ...fields, resolutionLbf };
    return scale === null
      ? add.run(omit(given, 'active'))
      : edit.run({ id: scale.id, rowVersion: scale.rowVersion, ...given });
  };
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      title={scale === null ? 'Add a scale' : `Change ${scale.name}`}
    >
      <RecordForm
        initial={initial}
        check={(fields) => inputErrors(contract.scales.add, omit(fields, 'active'))}
        command={scale === null ? add : edit}
        action={scale === null ? 'Add the scale' : 'Save'}
        onCancel={onClose}
        onSave={(fields) => void save(fields)}
      >
        {(value, onChange, errors) => (
          <Stack>
            <TextInput
              label="Name"
              description="As you call it at the bench, e.g. hanging scale at the rig."
              required
              data-autofocus
              value={value.name}
              error={errors.name}
              onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
            />
            <NumberField
              label="Smallest step it shows, pounds"
              unit="lb"
              required
              value={value.resolutionLbf}
              error={errors.resolutionLbf}
              onChange={(resolutionLbf) => onChange({ ...value, resolutionLbf })}
            />
            {scale === null ? null : (
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
