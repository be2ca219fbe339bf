import { Select, TextInput } from '@mantine/core';
import { finishKind, finishKindLabels, finishKinds } from '../../../../shared/finish.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import type { PartProps } from './range-inputs.tsx';
import type { SheetFields } from './sheet-fields.ts';

const kinds = finishKinds.map((value) => ({ value, label: finishKindLabels[value] }));

/** Which finish, and which print of its sheet the figures were copied from. */
export function HeadInputs({ value, onChange, errors }: PartProps<SheetFields>) {
  const set = (part: Partial<SheetFields>) => onChange({ ...value, ...part });
  return (
    <FieldGrid>
      <TextInput
        label="Name"
        description="As the finish room calls it."
        required
        data-autofocus
        maxLength={120}
        autoComplete="off"
        value={value.name}
        error={errors.name}
        onChange={(event) => set({ name: event.currentTarget.value })}
      />
      <Select
        label="Kind"
        description="A hardener makes it two-part."
        data={kinds}
        value={value.kind}
        onChange={(kind) => set({ kind: finishKind.parse(kind ?? value.kind) })}
      />
      <TextInput
        label="Revision of the data sheet"
        description="As printed on it."
        required
        maxLength={60}
        autoComplete="off"
        value={value.revision}
        error={errors.revision}
        onChange={(event) => set({ revision: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label="Date printed on the sheet"
        required
        value={value.datedOn}
        error={errors.datedOn}
        onChange={(event) => set({ datedOn: event.currentTarget.value })}
      />
    </FieldGrid>
  );
}
