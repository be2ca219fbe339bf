import { Fieldset, Select } from '@mantine/core';
import type { ConsumableSummary } from '../../../../shared/contract/stores.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import type { PartProps } from './range-inputs.tsx';
import type { SystemFields } from './system-fields.ts';

type Category = ConsumableSummary['category'];

interface StockSelectProps {
  label: string;
  description: string;
  categories: readonly Category[];
  consumables: readonly ConsumableSummary[];
  value: string | null;
  error: string | undefined;
  onChange: (id: string | null) => void;
}

function StockSelect(props: StockSelectProps) {
  const { categories, consumables, value, onChange, ...field } = props;
  const data = consumables
    .filter((each) => (categories.includes(each.category) && each.active) || each.id === value)
    .map(({ id, name, unit }) => ({ value: id, label: `${name}, in ${unit}` }));
  return (
    <Select
      {...field}
      searchable
      clearable
      placeholder={data.length === 0 ? 'Nothing of it in the stores' : 'Not kept in the stores'}
      clearButtonProps={{ 'aria-label': `Clear: ${field.label}` }}
      nothingFoundMessage="Nothing of that name in the stores."
      data={data}
      value={value}
      onChange={onChange}
    />
  );
}

interface StockInputsProps extends PartProps<SystemFields> {
  consumables: readonly ConsumableSummary[];
}

/** What each part is taken from when it is mixed: lot by lot, first expired first. */
export function StockInputs({ value, onChange, errors, consumables }: StockInputsProps) {
  const { kind } = value.sheet;
  const isPoured = kind === 'two-part' || kind === 'one-part';
  return (
    <Fieldset legend="Taken from the stores">
      <FieldGrid>
        <StockSelect
          label={kind === 'two-part' ? 'Resin' : 'Finish'}
          description="Mixing issues it, first expired first."
          categories={['finish']}
          consumables={consumables}
          value={value.resinId}
          error={errors.resinId}
          onChange={(resinId) => onChange({ ...value, resinId })}
        />
        {kind === 'two-part' ? (
          <StockSelect
            label="Hardener"
            description="A lot past its day is refused."
            categories={['hardener']}
            consumables={consumables}
            value={value.hardenerId}
            error={errors.hardenerId}
            onChange={(hardenerId) => onChange({ ...value, hardenerId })}
          />
        ) : null}
        {isPoured ? (
          <StockSelect
            label="Thinner"
            description="Where the sheet has any."
            categories={['thinner', 'solvent']}
            consumables={consumables}
            value={value.thinnerId}
            error={errors.thinnerId}
            onChange={(thinnerId) => onChange({ ...value, thinnerId })}
          />
        ) : null}
      </FieldGrid>
    </Fieldset>
  );
}
