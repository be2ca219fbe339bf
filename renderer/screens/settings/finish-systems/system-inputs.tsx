import { Checkbox, Stack } from '@mantine/core';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { ConsumableSummary } from '../../../../shared/contract/stores.ts';
import { finishSheet } from '../../../../shared/finish-sheet.ts';
import type { SizedGrit } from '../../../../shared/grit.ts';
import { orpc } from '../../../api/client.ts';
import { errorsUnder } from '../../../parts/field-errors.ts';
import { Mark } from '../../../parts/mark.tsx';
import { HeadInputs } from './head-inputs.tsx';
import { AirInputs, CureInputs, GritInputs, HazardInputs } from './limits-inputs.tsx';
import { MixInputs } from './mix-inputs.tsx';
import type { PartProps } from './range-inputs.tsx';
import { RecoatInputs } from './recoat-inputs.tsx';
import { type SheetFields, sheetFrom } from './sheet-fields.ts';
import { StockInputs } from './stock-inputs.tsx';
import type { SystemFields } from './system-fields.ts';

/** What the figures of a filled-in sheet may not be among each other, as it is typed. */
function useTroubles(fields: SheetFields): Record<string, string> {
  const read = finishSheet.safeParse(sheetFrom(fields));
  const check = useQuery({
    ...orpc.finish.checkSheet.queryOptions({
      input: { sheet: read.data ?? sheetFrom(fields) },
    }),
    enabled: read.success,
    placeholderData: keepPreviousData,
  });
  if (!read.success) return {};
  return Object.fromEntries((check.data ?? []).map(({ field, sentence }) => [field, sentence]));
}

function Troubles({ troubles }: { troubles: Record<string, string> }) {
  const sentences = [...new Set(Object.values(troubles))];
  if (sentences.length === 0) return null;
  return (
    <ul aria-label="To put right" style={{ margin: 0, paddingLeft: 0, listStyle: 'none' }}>
      {sentences.map((sentence) => (
        <li key={sentence}>
          <Mark kind="stop">{sentence}</Mark>
        </li>
      ))}
    </ul>
  );
}

interface SystemInputsProps extends PartProps<SystemFields> {
  consumables: readonly ConsumableSummary[];
  grits: readonly SizedGrit[];
  isNew: boolean;
}

/** Everything a data sheet gives, in the order it is read. */
export function SystemInputs(props: SystemInputsProps) {
  const { value, onChange, errors: given, consumables, grits, isNew } = props;
  const troubles = useTroubles(value.sheet);
  const errors = { ...troubles, ...given, ...errorsUnder(given, 'sheet') };
  const part = {
    value: value.sheet,
    onChange: (sheet: SheetFields) => onChange({ ...value, sheet }),
    errors,
  };
  return (
    <Stack>
      <HeadInputs {...part} />
      <MixInputs {...part} />
      <AirInputs {...part} />
      <RecoatInputs {...part} />
      <CureInputs {...part} />
      <GritInputs {...part} grits={grits} />
      <HazardInputs {...part} />
      <StockInputs value={value} onChange={onChange} errors={errors} consumables={consumables} />
      {isNew ? null : (
        <Checkbox
          label="In use"
          checked={value.active}
          onChange={(event) => onChange({ ...value, active: event.currentTarget.checked })}
        />
      )}
      <Troubles troubles={troubles} />
    </Stack>
  );
}
