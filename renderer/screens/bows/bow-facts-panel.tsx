import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Bow } from '../../../shared/contract/bows.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Facts } from '../../parts/facts.tsx';
import { omit } from '../../parts/omit.ts';
import { Panel } from '../../parts/panel.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { bowErrors } from './bow-fields.ts';
import { BowFieldsForm } from './bow-form.tsx';
import { bowFacts } from './bow-text.ts';

/** What a bow is, and the form to change it. */
export function BowFactsPanel({ bow }: { bow: Bow }) {
  // The record as it was when editing began: a change by somebody else must be noticed on saving.
  const [editing, setEditing] = useState<Bow | null>(null);
  const edit = useCommand(api.bows.edit, { onDone: () => setEditing(null) });
  const stop = () => {
    edit.reset();
    setEditing(null);
  };
  if (editing === null) {
    return (
      <Panel
        title="Facts"
        actions={
          <Button variant="default" onClick={() => setEditing(bow)}>
            Change
          </Button>
        }
      >
        <Facts facts={bowFacts(bow)} />
      </Panel>
    );
  }
  const { id, rowVersion } = editing;
  return (
    <Panel title="Change the facts">
      <RecordForm
        initial={omit(editing, 'id', 'rowVersion', 'createdAt', 'customerId')}
        check={bowErrors}
        command={edit}
        action="Save"
        onCancel={stop}
        onSave={(fields) => void edit.run({ id, rowVersion, ...fields })}
      >
        {(value, onChange, errors) => (
          <BowFieldsForm value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Panel>
  );
}
