import { Button } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import type { ConsumableDetail } from '../../../shared/contract/stores.ts';
import { decimal } from '../../../shared/measure.ts';
import { quantityText, unitLabels } from '../../../shared/stores.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Facts } from '../../parts/facts.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { Mark } from '../../parts/mark.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Panel } from '../../parts/panel.tsx';
import { coverageText } from './stores-words.ts';

interface OrderedFormProps {
  of: { id: string; rowVersion: number; name: string; unit: ConsumableDetail['unit'] };
  start: number | null;
  onClose: () => void;
}

/** Notes what was ordered, so that it is not ordered twice. */
export function OrderedForm({ of, start, onClose }: OrderedFormProps) {
  const [onOrder, setOnOrder] = useState(start);
  const [tried, setTried] = useState(false);
  const note = useCommand(api.stores.noteOrdered, { onDone: onClose });
  const fields = { id: of.id, rowVersion: of.rowVersion, onOrder: onOrder ?? Number.NaN };
  const wrong = inputErrors(contract.stores.noteOrdered, fields);
  const errors = tried ? { ...note.details, ...wrong } : {};
  return (
    <FormBox
      title={`On order: ${of.name}`}
      submitLabel="Note it"
      command={note}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void note.run(fields);
      }}
    >
      <NumberField
        label={`On order altogether, ${unitLabels[of.unit]}`}
        description="Receiving takes off what came; 0 where it will not come."
        required
        value={onOrder}
        error={errors.onOrder}
        onChange={setOnOrder}
      />
    </FormBox>
  );
}

function useText({ reorder, unit }: ConsumableDetail): string {
  const { weeklyUse, weeklyUseSpread, useFrom, useWeeks } = reorder;
  if (weeklyUse === null) return 'not known yet';
  const spread =
    weeklyUseSpread === null || weeklyUseSpread === 0
      ? ''
      : `, give or take ${decimal(weeklyUseSpread)}`;
  const from = useFrom === 'moves' ? `, from the last ${useWeeks} weeks` : ', as entered';
  return `${quantityText(weeklyUse, unit)}${spread}${from}`;
}

/** When to order and why: every number that goes into it. */
export function ReorderPanel({ detail }: { detail: ConsumableDetail }) {
  const [isOpen, setOpen] = useState(false);
  const { reorder, unit } = detail;
  const amount = (value: number | null) => (value === null ? '' : quantityText(value, unit));
  return (
    <Panel title="When to order">
      <p style={{ margin: '0 0 12px' }}>
        {reorder.toOrder ? <Mark kind="attention">{reorder.sentence}</Mark> : reorder.sentence}
      </p>
      <Facts
        facts={[
          ['In date', quantityText(detail.inDate, unit)],
          ['On order', detail.onOrder > 0 ? quantityText(detail.onOrder, unit) : ''],
          ['Lasts', coverageText(reorder.coverageWeeks)],
          ['Use in a week', useText(detail)],
          [
            'Wait',
            detail.waitWeeks === null ? 'not known yet' : `${decimal(detail.waitWeeks)} weeks`,
          ],
          ['Kept back', amount(reorder.safetyStock)],
          ['Order at', amount(reorder.reorderAt)],
          ['Order', amount(reorder.orderQuantity)],
        ]}
      />
      {isOpen ? (
        <div style={{ marginTop: 16 }}>
          <OrderedForm
            of={detail}
            start={detail.onOrder > 0 ? detail.onOrder : reorder.orderQuantity}
            onClose={() => setOpen(false)}
          />
        </div>
      ) : (
        <Button variant="default" mt="md" onClick={() => setOpen(true)}>
          Note what is on order
        </Button>
      )}
    </Panel>
  );
}
