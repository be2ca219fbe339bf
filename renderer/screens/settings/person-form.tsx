import { Checkbox, Modal, Select, TextInput } from '@mantine/core';
import { contract } from '../../../shared/contract/index.ts';
import type { Person } from '../../../shared/people.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { omit } from '../../parts/omit.ts';
import { RecordForm } from '../../parts/record-form.tsx';

type Fields = Omit<Person, 'id' | 'rowVersion'>;

const roleWords = [
  { value: 'owner', label: 'Owner: decides and lets things pass' },
  { value: 'office', label: 'Office: talks to customers, takes in orders' },
  { value: 'bench', label: 'Bench: works on bows' },
] as const;
const empty: Fields = { name: '', initials: '', role: 'bench', active: true };

interface PersonFormProps {
  open: Person | 'new' | null;
  onClose: () => void;
}

export function PersonForm({ open, onClose }: PersonFormProps) {
  const add = useCommand(api.people.add, { onDone: onClose });
  const edit = useCommand(api.people.edit, { onDone: onClose });
  const known = open === 'new' ? null : open;
  const save = (fields: Fields) =>
    known === null
      ? add.run(omit(fields, 'active'))
      : edit.run({ id: known.id, rowVersion: known.rowVersion, ...fields });
  return (
    <Modal
      opened={open !== null}
      onClose={onClose}
      title={known === null ? 'Add a person' : `Change ${known.name}`}
    >
      <RecordForm
        initial={known === null ? empty : omit(known, 'id', 'rowVersion')}
        check={(fields) => inputErrors(contract.people.add, omit(fields, 'active'))}
        command={known === null ? add : edit}
        action={known === null ? 'Add the person' : 'Save'}
        onCancel={onClose}
        onSave={(fields) => void save(fields)}
      >
        {(value, onChange, errors) => (
          <FieldGrid>
            <TextInput
              label="Name"
              required
              data-autofocus
              value={value.name}
              error={errors.name}
              onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
            />
            <TextInput
              label="Initials"
              required
              value={value.initials}
              error={errors.initials}
              onChange={(event) => onChange({ ...value, initials: event.currentTarget.value })}
            />
            <WideField>
              <Select
                label="Works as"
                data={roleWords}
                value={value.role}
                onChange={(role) => role && onChange({ ...value, role })}
              />
            </WideField>
            {known === null ? null : (
              <WideField>
                <Checkbox
                  label="Works here"
                  description="Take the tick away when somebody leaves. The name stays in the history."
                  checked={value.active}
                  onChange={(event) => onChange({ ...value, active: event.currentTarget.checked })}
                />
              </WideField>
            )}
          </FieldGrid>
        )}
      </RecordForm>
    </Modal>
  );
}
