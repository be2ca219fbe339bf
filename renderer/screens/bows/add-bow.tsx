import { Modal } from '@mantine/core';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { RecordForm } from '../../parts/record-form.tsx';
import { bowErrors, emptyBow } from './bow-fields.ts';
import { BowFieldsForm } from './bow-form.tsx';

interface AddBowProps {
  opened: boolean;
  /** Its owner; none for a bow of the shop's own. */
  customerId: string | null;
  onClose: () => void;
  onAdded: (id: string) => void;
}

export function AddBow({ opened, customerId, onClose, onAdded }: AddBowProps) {
  const add = useCommand(api.bows.add, { onDone: ({ id }) => onAdded(id) });
  return (
    <Modal opened={opened} onClose={onClose} title="Add a bow" size="xl">
      <RecordForm
        initial={emptyBow}
        check={bowErrors}
        command={add}
        action="Add the bow"
        onCancel={onClose}
        onSave={(fields) => void add.run({ customerId, ...fields })}
      >
        {(value, onChange, errors) => (
          <BowFieldsForm value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Modal>
  );
}
