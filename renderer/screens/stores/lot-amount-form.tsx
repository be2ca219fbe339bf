import { TextInput } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import type { Lot } from '../../../shared/contract/stores.ts';
import { quantityText, type StockUnit } from '../../../shared/stores.ts';
import type { Command } from '../../api/command.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import type { ScannedForm } from './lot-form.ts';
import { type Amount, QuantityFields } from './quantity-fields.tsx';
import { useStockScan } from './use-stock-scan.ts';

export interface LotFormProps {
  lot: Lot;
  unit: StockUnit;
  onDone: (said: string) => void;
  onCancel: () => void;
}

export interface AmountWithReason {
  commandId: string;
  lotId: string;
  quantity: number;
  unit: StockUnit;
  reason: string;
}

interface AmountFormProps extends LotFormProps {
  /** Which form of a lot it is: a scanned label opens the same one on its lot. */
  form: ScannedForm;
  /** What a scanned order's number means here. */
  onOrder?: (orderId: string) => void;
  title: string;
  submitLabel: string;
  label: string;
  start: number | null;
  procedure: Parameters<typeof inputErrors>[0];
  command: Command<AmountWithReason, unknown>;
  reasonLabel: string;
  startReason?: string;
  /** More of what the command takes. */
  more?: object;
  children?: ReactNode;
}

/** An amount of one lot and the reason for it. */
export function AmountForm(props: AmountFormProps) {
  const { lot, unit, title, command, procedure, more = {} } = props;
  const [amount, setAmount] = useState<Amount>({ quantity: props.start, unit });
  const [reason, setReason] = useState(props.startReason ?? '');
  const [tried, setTried] = useState(false);
  const fields = {
    lotId: lot.id,
    quantity: amount.quantity ?? Number.NaN,
    unit: amount.unit,
    reason: reason.trim(),
    ...more,
  };
  const wrong = inputErrors(procedure, fields);
  const errors = tried ? { ...command.details, ...wrong } : {};
  const onScan = useStockScan({
    form: props.form,
    lotId: lot.id,
    ...(props.onOrder === undefined ? {} : { onOrder: props.onOrder }),
  });
  return (
    <div onKeyDownCapture={onScan}>
      <FormBox
        title={title}
        submitLabel={props.submitLabel}
        command={command}
        onCancel={props.onCancel}
        onSubmit={() => {
          setTried(true);
          if (Object.keys(wrong).length === 0) void command.run(fields);
        }}
      >
        <QuantityFields
          label={props.label}
          counted={unit}
          value={amount}
          errors={errors}
          description={`The moves say ${quantityText(lot.onHand, unit)}.`}
          onChange={setAmount}
        />
        {props.children}
        <TextInput
          label={props.reasonLabel}
          required
          maxLength={400}
          autoComplete="off"
          value={reason}
          error={errors.reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      </FormBox>
    </div>
  );
}
