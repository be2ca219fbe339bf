import { Modal, Select, Textarea, TextInput } from '@mantine/core';
import { markingTroubles } from '../../../../shared/bow-checks.ts';
import {
  type LimbSet,
  type LimbSetFields,
  limbSetFields,
} from '../../../../shared/contract/limb-sets.ts';
import { api } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { fieldErrors } from '../../../parts/field-errors.ts';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { omit } from '../../../parts/omit.ts';
import { RecordForm } from '../../../parts/record-form.tsx';
import { referenceWords } from '../bow-words.ts';

const emptyLimbSet: LimbSetFields = {
  name: '',
  upperSerial: '',
  lowerSerial: '',
  amoLengthIn: null,
  markedWeightLbf: null,
  markedDrawIn: null,
  markedDrawReference: 'unknown',
  riserName: '',
  riserLengthIn: null,
  riserPadDeg: null,
  notes: '',
};

/** What is wrong, by field; empty when the limb set can be written. */
export function limbSetErrors(value: LimbSetFields): Record<string, string> {
  const troubles = markingTroubles(value).map(({ field, sentence }) => [field, sentence]);
  return { ...Object.fromEntries(troubles), ...fieldErrors(limbSetFields, value) };
}

interface GroupProps {
  value: LimbSetFields;
  onChange: (value: LimbSetFields) => void;
  errors: Record<string, string>;
}

type WordKey = 'name' | 'upperSerial' | 'lowerSerial' | 'riserName';
type NumberKey =
  | 'amoLengthIn'
  | 'markedWeightLbf'
  | 'markedDrawIn'
  | 'riserLengthIn'
  | 'riserPadDeg';

function LimbSetGroup({ value, onChange, errors }: GroupProps) {
  const set = (part: Partial<LimbSetFields>) => onChange({ ...value, ...part });
  const words = (key: WordKey, label: string) => (
    <TextInput
      label={label}
      required={key === 'name'}
      autoComplete="off"
      value={value[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  const measured = (key: NumberKey, label: string, unit: string) => (
    <NumberField
      label={label}
      unit={unit}
      value={value[key]}
      error={errors[key]}
      onChange={(given) => set({ [key]: given })}
    />
  );
  return (
    <FieldGrid>
      {words('name', 'What to call them')}
      {words('upperSerial', 'Serial, upper limb')}
      {words('lowerSerial', 'Serial, lower limb')}
      {words('riserName', 'Riser they were marked on')}
      {measured('riserLengthIn', 'Length of that riser, inches', 'in')}
      {measured('riserPadDeg', 'Pad angle of that riser, degrees', 'deg')}
      {measured('amoLengthIn', 'AMO length with that riser, inches', 'in')}
      {measured('markedWeightLbf', 'Marked weight, pounds', 'lb')}
      {measured('markedDrawIn', 'Marked at draw length, inches', 'in')}
      <Select
        label="That draw was measured"
        data={referenceWords}
        value={value.markedDrawReference}
        onChange={(reference) => reference && set({ markedDrawReference: reference })}
      />
      <WideField>
        <Textarea
          label="Notes on the limbs"
          value={value.notes}
          error={errors.notes}
          onChange={(event) => set({ notes: event.currentTarget.value })}
        />
      </WideField>
    </FieldGrid>
  );
}

interface LimbSetDialogProps {
  opened: boolean;
  bowId: string;
  onClose: () => void;
  onDone: (id: string) => void;
}

export function AddLimbSet({ opened, bowId, onClose, onDone }: LimbSetDialogProps) {
  const add = useCommand(api.limbSets.add, { onDone: ({ id }) => onDone(id) });
  return (
    <Modal opened={opened} onClose={onClose} title="Add a pair of limbs" size="xl">
      <RecordForm
        initial={emptyLimbSet}
        check={limbSetErrors}
        command={add}
        action="Add the limbs"
        onCancel={onClose}
        onSave={(fields) => void add.run({ bowId, ...fields })}
      >
        {(value, onChange, errors) => (
          <LimbSetGroup value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Modal>
  );
}

/** The record as it was when editing began: a change by somebody else is noticed on saving. */
export function EditLimbSet({ limbSet, onClose }: { limbSet: LimbSet; onClose: () => void }) {
  const edit = useCommand(api.limbSets.edit, { onDone: onClose });
  const { id, rowVersion } = limbSet;
  return (
    <Dialog onClose={onClose} title={`Change "${limbSet.name}"`} size="xl">
      <RecordForm<LimbSetFields>
        initial={omit(limbSet, 'id', 'rowVersion', 'bowId', 'createdAt')}
        check={limbSetErrors}
        command={edit}
        action="Save"
        onCancel={onClose}
        onSave={(fields) => void edit.run({ id, rowVersion, ...fields })}
      >
        {(value, onChange, errors) => (
          <LimbSetGroup value={value} onChange={onChange} errors={errors} />
        )}
      </RecordForm>
    </Dialog>
  );
}
