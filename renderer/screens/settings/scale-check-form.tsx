import { Modal } from '@mantine/core';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import type { Scale } from './scales.tsx';

const names = {
  lowLoadLbf: 'Light load, known weight',
  lowReadingLbf: 'Light load, scale reads',
  highLoadLbf: 'Heavy load, known weight',
  highReadingLbf: 'Heavy load, scale reads',
} as const;
type Key = keyof typeof names;
type Fields = Record<Key, number | null>;
const keys = Object.keys(names) as Key[];
const empty: Fields = {
  lowLoadLbf: null,
  lowReadingLbf: null,
  highLoadLbf: null,
  highReadingLbf: null,
};

interface ScaleCheckFormProps {
  scale: Scale | null;
  onClose: () => void;
}

/** Two known loads and what the scale read; more than half a pound off, and it may not weigh. */
export function ScaleCheckForm({ scale, onClose }: ScaleCheckFormProps) {
  const check = useCommand(api.scales.check, { onDone: onClose });
  const scaleId = scale?.id ?? '';
  const save = ({ lowLoadLbf, lowReadingLbf, highLoadLbf, highReadingLbf }: Fields) => {
    if (lowLoadLbf === null || lowReadingLbf === null) return;
    if (highLoadLbf === null || highReadingLbf === null) return;
    void check.run({ scaleId, lowLoadLbf, lowReadingLbf, highLoadLbf, highReadingLbf });
  };
  return (
    <Modal opened={scale !== null} onClose={onClose} title={`Check ${scale?.name ?? ''}`} size="lg">
      <p style={{ marginTop: 0 }}>
        Hang two known loads, one under and one over the weights you measure, e.g. 20 and 60 lb.
      </p>
      <RecordForm
        initial={empty}
        check={(fields) => inputErrors(contract.scales.check, { ...fields, scaleId })}
        command={check}
        action="Save the check"
        onCancel={onClose}
        onSave={save}
      >
        {(value, onChange, errors) => (
          <FieldGrid>
            {keys.map((key) => (
              <NumberField
                key={key}
                label={names[key]}
                unit="lb"
                required
                value={value[key]}
                error={errors[key]}
                onChange={(given) => onChange({ ...value, [key]: given })}
              />
            ))}
          </FieldGrid>
        )}
      </RecordForm>
    </Modal>
  );
}
