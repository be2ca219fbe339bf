import { Autocomplete, Checkbox, Textarea, TextInput } from '@mantine/core';
import type { Customer } from '../../../../shared/contract/customers.ts';
import type { OrderFields } from '../../../../shared/contract/orders.ts';
import { service, serviceLabels, services } from '../../../../shared/stages.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { MoneyField } from './money-field.tsx';
import { tillerAdvice } from './tiller-advice.ts';

interface JobInputsProps {
  job: OrderFields;
  set: (part: Partial<OrderFields>) => void;
  errors: Record<string, string>;
  style: Customer['shootingStyle'];
  /** The price is made up of lines, which alone say what it comes to. */
  hasPriceLines?: boolean;
}

/** What shall be done to the bow, by when and for how much. */
export function JobInputs({ job, set, errors, style, hasPriceLines = false }: JobInputsProps) {
  const notes = (key: 'shipTo' | 'privateNotes' | 'customerNotes', label: string, max: number) => (
    <Textarea
      label={label}
      maxLength={max}
      value={job[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <>
      <Checkbox.Group
        size="md"
        label="Services"
        required
        value={job.services}
        error={errors.services}
        onChange={(chosen) => set({ services: service.array().parse(chosen) })}
      >
        <FieldGrid>
          {services.map((value) => (
            <Checkbox key={value} value={value} label={serviceLabels[value]} />
          ))}
        </FieldGrid>
      </Checkbox.Group>
      <FieldGrid>
        <NumberField
          label="Target weight, pounds"
          unit="lb"
          value={job.targetWeightLbf}
          error={errors.targetWeightLbf}
          onChange={(targetWeightLbf) => set({ targetWeightLbf })}
        />
        <NumberField
          label="At draw length, inches AMO"
          unit="in"
          value={job.targetDrawIn}
          error={errors.targetDrawIn}
          onChange={(targetDrawIn) => set({ targetDrawIn })}
        />
        <Autocomplete
          size="md"
          label="Tiller target"
          description="Offered: common practice for how the archer holds the string"
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          data={tillerAdvice(style)}
          filter={({ options }) => options}
          maxLength={200}
          value={job.tillerTarget}
          error={errors.tillerTarget}
          onChange={(tillerTarget) => set({ tillerTarget })}
        />
        <TextInput
          type="date"
          label="Promised for"
          value={job.promisedOn ?? ''}
          error={errors.promisedOn}
          onChange={(event) => set({ promisedOn: event.currentTarget.value || null })}
        />
        {hasPriceLines ? null : (
          <MoneyField
            label="Estimate, dollars"
            value={job.estimateCents}
            error={errors.estimateCents}
            onChange={(estimateCents) => set({ estimateCents })}
          />
        )}
      </FieldGrid>
      {notes('shipTo', "Ship to, if not the customer's address", 600)}
      {notes('customerNotes', 'Notes the customer may read', 4000)}
      {notes('privateNotes', 'Private notes, for the shop only', 4000)}
    </>
  );
}
