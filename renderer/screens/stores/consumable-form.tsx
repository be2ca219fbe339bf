import { Checkbox } from '@mantine/core';
import { useState } from 'react';
import type { ConsumableDetail } from '../../../shared/contract/stores.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { consumableErrors, editableOf, emptyConsumable, fieldsOf } from './consumable-fields.ts';
import { ConsumableInputs } from './consumable-inputs.tsx';
import { useScanKeepsForm } from './use-scan-keeps-form.ts';

interface AddConsumableProps {
  onClose: () => void;
  onAdded: (id: string) => void;
}

export function AddConsumable({ onClose, onAdded }: AddConsumableProps) {
  const add = useCommand(api.stores.addConsumable, { onDone: ({ id }) => onAdded(id) });
  const keepsForm = useScanKeepsForm();
  return (
    <Dialog onClose={onClose} title="Add a consumable" size="xl">
      <div onKeyDownCapture={keepsForm}>
        <RecordForm
          initial={emptyConsumable}
          check={consumableErrors}
          command={add}
          action="Add the consumable"
          onCancel={onClose}
          onSave={(fields) => void add.run(fields)}
        >
          {(value, onChange, errors) => (
            <ConsumableInputs value={value} onChange={onChange} errors={errors} isNew />
          )}
        </RecordForm>
      </div>
    </Dialog>
  );
}

export function EditConsumable({
  detail,
  onClose,
}: {
  detail: ConsumableDetail;
  onClose: () => void;
}) {
  const edit = useCommand(api.stores.editConsumable, { onDone: onClose });
  const [active, setActive] = useState(detail.active);
  const keepsForm = useScanKeepsForm();
  const { id, rowVersion } = detail;
  return (
    <Dialog onClose={onClose} title={`Change ${detail.name}`} size="xl">
      <div onKeyDownCapture={keepsForm}>
        <RecordForm
          initial={fieldsOf(detail)}
          check={consumableErrors}
          command={edit}
          action="Save"
          onCancel={onClose}
          onSave={(fields) => void edit.run({ id, rowVersion, ...editableOf(fields), active })}
        >
          {(value, onChange, errors) => (
            <>
              <ConsumableInputs value={value} onChange={onChange} errors={errors} isNew={false} />
              <Checkbox
                mt="sm"
                label="In use"
                description="Without it, it is put away: nothing is received or ordered any more."
                checked={active}
                error={errors.active}
                onChange={(event) => setActive(event.currentTarget.checked)}
              />
            </>
          )}
        </RecordForm>
      </div>
    </Dialog>
  );
}
