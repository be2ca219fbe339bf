import { Select, TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../../shared/contract/index.ts';
import type { PaymentFields } from '../../../../shared/contract/prices.ts';
import {
  paymentKind,
  paymentKindLabels,
  paymentKinds,
  paymentMethod,
  paymentMethodLabels,
  paymentMethods,
} from '../../../../shared/money.ts';
import { api } from '../../../api/client.ts';
import { today } from '../../../parts/days.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { inputErrors } from '../../../parts/input-schema.ts';
import { MoneyField } from '../facts/money-field.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

type Draft = Omit<PaymentFields, 'cents'> & { cents: number | null };

/**
 * The deposit while it is asked and nothing came in, then what is open. It follows the order while
 * the form is open: a payment that was just recorded must not be proposed again.
 */
function useProposed(): Draft {
  const { depositCents, receivedCents, balanceCents } = useOrder().order.price;
  const isDeposit = depositCents > 0 && receivedCents === 0;
  const open = Math.max(0, balanceCents ?? 0);
  return {
    kind: isDeposit ? 'deposit' : 'payment',
    method: 'card',
    cents: (isDeposit ? depositCents : open) || null,
    receivedOn: today(),
    reference: '',
    note: '',
  };
}

function checked(draft: Draft): Record<string, string> {
  const fields = { ...draft, orderId: 'check', cents: draft.cents ?? Number.NaN };
  const errors = inputErrors(contract.prices.recordPayment, fields);
  if (errors.cents !== undefined) errors.cents = 'Give an amount above nothing.';
  return errors;
}

/** Money that came in or went back. */
export function PaymentForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const [typed, setTyped] = useState<Partial<Draft>>({});
  const draft: Draft = { ...useProposed(), ...typed };
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.prices.recordPayment, onClose);
  const errors = { ...command.details, ...(isTried ? checked(draft) : {}) };
  const set = (part: Partial<Draft>) => setTyped((now) => ({ ...now, ...part }));
  const text = (key: 'reference' | 'note', label: string, max: number) => (
    <TextInput
      label={label}
      maxLength={max}
      autoComplete="off"
      value={draft[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <FormBox
      title="Record a payment"
      submitLabel="Record it"
      command={command}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (draft.cents === null || Object.keys(checked(draft)).length > 0) return;
        void command.run({ orderId: order.card.id, ...draft, cents: draft.cents });
      }}
    >
      <FieldGrid>
        <Select
          label="What it is"
          allowDeselect={false}
          data={paymentKinds.map((value) => ({ value, label: paymentKindLabels[value] }))}
          value={draft.kind}
          onChange={(value) => set({ kind: paymentKind.parse(value) })}
        />
        <MoneyField
          label="Amount, dollars"
          value={draft.cents}
          error={errors.cents}
          onChange={(cents) => set({ cents })}
        />
        <Select
          label="How"
          allowDeselect={false}
          data={paymentMethods.map((value) => ({ value, label: paymentMethodLabels[value] }))}
          value={draft.method}
          onChange={(value) => set({ method: paymentMethod.parse(value) })}
        />
        <TextInput
          type="date"
          label="On"
          required
          value={draft.receivedOn}
          error={errors.receivedOn}
          onChange={(event) => set({ receivedOn: event.currentTarget.value })}
        />
        {text('reference', 'Reference, e.g. check number', 120)}
        <WideField>{text('note', 'Note', 400)}</WideField>
      </FieldGrid>
    </FormBox>
  );
}
