import { TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { PricePolicy as Policy } from '../../../shared/contract/prices.ts';
import { dollarText, rateText } from '../../../shared/money.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Facts } from '../../parts/facts.tsx';
import { FieldGrid } from '../../parts/fields.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Panel } from '../../parts/panel.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import { MoneyField } from '../orders/facts/money-field.tsx';

interface Fields {
  taxName: string;
  taxPercent: number | null;
  depositPercent: number | null;
  rushFeeCents: number | null;
  returnFreightCents: number | null;
}

const fieldsOf = (policy: Policy): Fields => ({
  ...policy,
  taxPercent: policy.taxRatePpm / 10_000,
});

const given = (fields: Fields) => ({
  taxName: fields.taxName,
  taxRatePpm: Math.round((fields.taxPercent ?? 0) * 10_000),
  depositPercent: fields.depositPercent ?? 0,
  rushFeeCents: fields.rushFeeCents ?? 0,
  returnFreightCents: fields.returnFreightCents ?? 0,
});

function PolicyForm({ policy, onSaved }: { policy: Policy; onSaved: () => void }) {
  const edit = useCommand(api.prices.editPolicy, { onDone: onSaved });
  return (
    <RecordForm<Fields>
      initial={fieldsOf(policy)}
      check={(fields) =>
        inputErrors(contract.prices.editPolicy, { rowVersion: 1, ...given(fields) })
      }
      command={edit}
      action="Save"
      onSave={(fields) => void edit.run({ rowVersion: policy.rowVersion, ...given(fields) })}
    >
      {(value, onChange, errors) => (
        <FieldGrid>
          <TextInput
            label="Name of the tax"
            required
            maxLength={40}
            value={value.taxName}
            error={errors.taxName}
            onChange={(event) => onChange({ ...value, taxName: event.currentTarget.value })}
          />
          <NumberField
            label="Tax rate, percent"
            unit="%"
            value={value.taxPercent}
            error={errors.taxRatePpm}
            onChange={(taxPercent) => onChange({ ...value, taxPercent })}
          />
          <NumberField
            label="Deposit asked, percent of the total"
            unit="%"
            value={value.depositPercent}
            error={errors.depositPercent}
            onChange={(depositPercent) => onChange({ ...value, depositPercent })}
          />
          <MoneyField
            label="Rush fee, dollars"
            value={value.rushFeeCents}
            error={errors.rushFeeCents}
            onChange={(rushFeeCents) => onChange({ ...value, rushFeeCents })}
          />
          <MoneyField
            label="Return freight, dollars"
            value={value.returnFreightCents}
            error={errors.returnFreightCents}
            onChange={(returnFreightCents) => onChange({ ...value, returnFreightCents })}
          />
        </FieldGrid>
      )}
    </RecordForm>
  );
}

/** Tax, deposit and the usual fees. The owner sets them, everybody reads them. */
export function PricePolicy({ isOwner }: { isOwner: boolean }) {
  const policy = useQuery(orpc.prices.policy.queryOptions());
  const [isSaved, setSaved] = useState(false);
  if (policy.error !== null) {
    return <ErrorNote error={policy.error} onAgain={() => void policy.refetch()} />;
  }
  if (policy.data === undefined) return <BusyNote />;
  const { taxName, taxRatePpm, depositPercent, rushFeeCents, returnFreightCents } = policy.data;
  return (
    <Panel title="Tax, deposit and fees">
      <p style={{ marginTop: 0 }}>
        Tax is reckoned once an order, on the sum of its taxed lines after discounts, half a cent
        up. An order keeps the tax of the day its first line is written. The rate, and what is
        taxed, is as your tax office says for your place; 0 for none.
      </p>
      {isOwner ? (
        <PolicyForm
          key={policy.data.rowVersion}
          policy={policy.data}
          onSaved={() => setSaved(true)}
        />
      ) : (
        <Facts
          facts={[
            ['Tax', `${taxName} ${rateText(taxRatePpm)}`],
            ['Deposit asked', `${depositPercent} %`],
            ['Rush fee', dollarText(rushFeeCents)],
            ['Return freight', dollarText(returnFreightCents)],
          ]}
        />
      )}
      <p role="status">{isSaved ? 'Saved.' : null}</p>
    </Panel>
  );
}
