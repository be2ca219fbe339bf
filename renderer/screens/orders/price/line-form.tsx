import { Checkbox, Select, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { PriceLineFields } from '../../../../shared/contract/prices.ts';
import { priceLineKind, priceLineKindLabels, priceLineKinds } from '../../../../shared/money.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { VoidsNote } from '../consents/voids-note.tsx';
import { MoneyField } from '../facts/money-field.tsx';
import { useOrder } from '../order-screen.tsx';
import { type LineDraft, lineErrors, lineInput } from './line-fields.ts';

interface LineFormProps {
  title: string;
  submitLabel: string;
  initial: LineDraft;
  command: Parameters<typeof FormBox>[0]['command'] & { details: Record<string, string> };
  onCancel: () => void;
  onSubmit: (fields: PriceLineFields) => void;
}

interface InputsProps {
  draft: LineDraft;
  set: (part: Partial<LineDraft>) => void;
  errors: Record<string, string>;
}

/** What comes off: a part of what stands above the line, or an amount. */
function DiscountInputs({ draft, set, errors }: InputsProps) {
  return (
    <>
      <Select
        label="How much comes off"
        data={[
          { value: 'percent', label: 'In percent' },
          { value: 'amount', label: 'As an amount' },
        ]}
        allowDeselect={false}
        value={draft.isPercent ? 'percent' : 'amount'}
        onChange={(value) => set({ isPercent: value === 'percent' })}
      />
      {draft.isPercent ? (
        <NumberField
          label="Percent of what stands above"
          unit="%"
          required
          value={draft.percent}
          error={errors.discountBp}
          onChange={(percent) => set({ percent })}
        />
      ) : (
        <MoneyField
          label="Amount off, dollars"
          value={draft.unitCents}
          error={errors.unitCents}
          onChange={(unitCents) => set({ unitCents })}
        />
      )}
    </>
  );
}

function AmountInputs({ draft, set, errors }: InputsProps) {
  return (
    <>
      <NumberField
        label="Quantity"
        required
        value={draft.quantity}
        error={errors.quantity}
        onChange={(quantity) => set({ quantity })}
      />
      <MoneyField
        label="Price of one, dollars"
        value={draft.unitCents}
        error={errors.unitCents}
        onChange={(unitCents) => set({ unitCents })}
      />
      <NumberField
        label="Time, minutes"
        unit="min"
        value={draft.minutes}
        error={errors.minutes}
        onChange={(minutes) => set({ minutes })}
      />
      <Checkbox
        mt="lg"
        label="Taxed"
        checked={draft.taxable}
        onChange={(event) => set({ taxable: event.currentTarget.checked })}
      />
    </>
  );
}

/** One line of an order's price. */
export function LineForm(props: LineFormProps) {
  const { title, submitLabel, initial, command, onCancel, onSubmit } = props;
  const [draft, setDraft] = useState(initial);
  const [isTried, setTried] = useState(false);
  const errors = { ...command.details, ...(isTried ? lineErrors(draft) : {}) };
  const set = (part: Partial<LineDraft>) => setDraft((now) => ({ ...now, ...part }));
  const inputs = { draft, set, errors };
  const { order } = useOrder();
  return (
    <FormBox
      title={title}
      submitLabel={submitLabel}
      command={command}
      onCancel={onCancel}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(lineErrors(draft)).length === 0) onSubmit(lineInput(draft));
      }}
    >
      <FieldGrid>
        <WideField>
          <TextInput
            label="What the customer reads"
            required
            maxLength={160}
            autoComplete="off"
            value={draft.what}
            error={errors.what}
            onChange={(event) => set({ what: event.currentTarget.value })}
          />
        </WideField>
        <Select
          label="Kind"
          allowDeselect={false}
          data={priceLineKinds.map((value) => ({ value, label: priceLineKindLabels[value] }))}
          value={draft.kind}
          onChange={(value) => set({ kind: priceLineKind.parse(value) })}
        />
        {draft.kind === 'discount' ? <DiscountInputs {...inputs} /> : <AmountInputs {...inputs} />}
      </FieldGrid>
      <VoidsNote orderId={order.card.id} change={{ priceLines: true }} />
    </FormBox>
  );
}
