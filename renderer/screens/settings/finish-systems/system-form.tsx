import { Modal } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { FinishSystem } from '../../../../shared/contract/finish.ts';
import { contract } from '../../../../shared/contract/index.ts';
import { api, orpc } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { inputErrors } from '../../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { RecordForm } from '../../../parts/record-form.tsx';
import { fieldsOfSystem, newSystem, systemInput } from './system-fields.ts';
import { SystemInputs } from './system-inputs.tsx';

interface SystemFormProps {
  opened: boolean;
  /** The finish to change; none adds one. */
  system: FinishSystem | null;
  onClose: () => void;
}

function Form({ system, onClose }: Omit<SystemFormProps, 'opened'>) {
  const grits = useQuery(orpc.stores.grits.queryOptions());
  const stores = useQuery(orpc.stores.list.queryOptions());
  const add = useCommand(api.finish.addSystem, { onDone: onClose });
  const edit = useCommand(api.finish.editSystem, { onDone: onClose });
  const error = grits.error ?? stores.error;
  if (error !== null) {
    return (
      <ErrorNote
        error={error}
        onAgain={() => {
          for (const query of [grits, stores]) void query.refetch();
        }}
      />
    );
  }
  if (grits.data === undefined || stores.data === undefined) return <BusyNote />;
  const known = { grits: grits.data, consumables: stores.data.consumables };
  return (
    <RecordForm
      initial={system === null ? newSystem() : fieldsOfSystem(system)}
      check={(fields) => inputErrors(contract.finish.addSystem, systemInput(fields))}
      command={system === null ? add : edit}
      action={system === null ? 'Add the finish' : 'Save'}
      onCancel={onClose}
      onSave={(fields) => {
        const given = systemInput(fields);
        if (system === null) void add.run(given);
        else void edit.run({ id: system.id, rowVersion: system.rowVersion, ...given });
      }}
    >
      {(value, onChange, errors) => (
        <SystemInputs
          value={value}
          onChange={onChange}
          errors={errors}
          isNew={system === null}
          {...known}
        />
      )}
    </RecordForm>
  );
}

/** One finish, copied from its data sheet. */
export function SystemForm({ opened, system, onClose }: SystemFormProps) {
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      size="xl"
      title={system === null ? 'Add a finish, from its data sheet' : `Change ${system.name}`}
    >
      <Form system={system} onClose={onClose} />
    </Modal>
  );
}
