import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Customer } from '../../../shared/contract/customers.ts';
import { inchGlyph } from '../../../shared/measure.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { addressLines } from '../../parts/address-fields.tsx';
import { dayOf, fullDay } from '../../parts/days.ts';
import { Facts } from '../../parts/facts.tsx';
import { omit } from '../../parts/omit.ts';
import { Panel } from '../../parts/panel.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { CustomerFieldsForm, customerErrors } from './customer-form.tsx';
import { contactWords, styleWords, wordOf } from './customer-words.ts';

interface CustomerFactsPanelProps {
  customer: Customer;
  mayEdit: boolean;
}

/** Who a customer is, and the form to change it. */
export function CustomerFactsPanel({ customer, mayEdit }: CustomerFactsPanelProps) {
  // The record as it was when editing began: a change by somebody else must be noticed on saving.
  const [editing, setEditing] = useState<Customer | null>(null);
  const edit = useCommand(api.customers.edit, { onDone: () => setEditing(null) });
  const stop = () => {
    edit.reset();
    setEditing(null);
  };
  if (editing === null) {
    return (
      <Panel
        title="Facts"
        actions={
          mayEdit ? (
            <Button variant="default" onClick={() => setEditing(customer)}>
              Change
            </Button>
          ) : null
        }
      >
        <Facts facts={factsOf(customer)} />
      </Panel>
    );
  }
  const { id, rowVersion } = editing;
  return (
    <Panel title="Change the facts">
      <RecordForm
        initial={omit(editing, 'id', 'rowVersion', 'createdAt')}
        check={customerErrors}
        command={edit}
        action="Save"
        onCancel={stop}
        onSave={(fields) => void edit.run({ id, rowVersion, ...fields })}
      >
        {(value, onChange, errors) => (
          <CustomerFieldsForm value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Panel>
  );
}

function factsOf(customer: Customer): [string, string][] {
  const draw = customer.ownDrawIn === null ? '' : `${inchGlyph(customer.ownDrawIn)}" AMO`;
  return [
    ['Phone', customer.phone],
    ['E-mail', customer.email],
    ['Reached by', wordOf(contactWords, customer.preferredContact)],
    ['Address', addressLines(customer.address).join('\n')],
    ['Shoots', wordOf(styleWords, customer.shootingStyle)],
    ['Own draw', draw],
    ['Notes', customer.notes],
    ['Since', fullDay(dayOf(customer.createdAt))],
  ];
}
