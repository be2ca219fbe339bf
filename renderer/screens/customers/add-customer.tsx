import { Modal } from '@mantine/core';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { RecordForm } from '../../parts/record-form.tsx';
import { CustomerFieldsForm, customerErrors, emptyCustomer } from './customer-form.tsx';

interface AddCustomerProps {
  opened: boolean;
  /** What was typed into the search: most likely the name. */
  name: string;
  onClose: () => void;
  onAdded: (id: string) => void;
}

export function AddCustomer({ opened, name, onClose, onAdded }: AddCustomerProps) {
  const add = useCommand(api.customers.add, { onDone: ({ id }) => onAdded(id) });
  return (
    <Modal opened={opened} onClose={onClose} title="Add a customer" size="xl">
      <RecordForm
        initial={{ ...emptyCustomer, name }}
        check={customerErrors}
        command={add}
        action="Add the customer"
        onCancel={onClose}
        onSave={(fields) => void add.run(fields)}
      >
        {(value, onChange, errors) => (
          <CustomerFieldsForm value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Modal>
  );
}
