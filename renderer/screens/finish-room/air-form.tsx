import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { airFrom } from './air-fields.ts';
import { AirView } from './air-view.tsx';
import type { AirNumbers } from './air-words.ts';
import { Answer } from './answer.tsx';
import classes from './finish-room.module.css';
import { useAirLook } from './use-air-look.ts';
import { instantFrom } from './when.ts';
import { WhenField } from './when-field.tsx';

interface AirFormProps {
  finish: { id: string; name: string } | null;
  onClose: () => void;
}

const empty = { airF: null, humidityPercent: null, surfaceF: null, note: '', at: '' };
type AirFields = {
  airF: number | null;
  humidityPercent: number | null;
  surfaceF: number | null;
  note: string;
  at: string;
};

const inputOf = ({ airF, humidityPercent, surfaceF, note, at }: AirFields) => ({
  airF: airF ?? Number.NaN,
  humidityPercent: humidityPercent ?? Number.NaN,
  surfaceF,
  note,
  at: instantFrom(at),
});

/** Dew point and margin of what is typed, and whether a coat may go on in it. */
function AirAnswer({ air, finish }: { air: AirNumbers | null; finish: AirFormProps['finish'] }) {
  const { look, isBusy, error, again } = useAirLook(air, finish?.id ?? null);
  if (air === null) {
    return <p className={classes.quiet}>The dew point shows once air and humidity are given.</p>;
  }
  if (error !== null) return <ErrorNote error={error} onAgain={again} />;
  return (
    <Answer isBusy={isBusy}>
      <AirView air={air} look={look} finishName={finish?.name ?? ''} />
    </Answer>
  );
}

/** The room's air, read before a coat; dew point and margin show as it is typed. */
export function AirForm({ finish, onClose }: AirFormProps) {
  const [fields, setFields] = useState<AirFields>(empty);
  const [isTried, setTried] = useState(false);
  const command = useCommand(api.finish.recordAir, { onDone: onClose });
  const set = (part: Partial<AirFields>) => setFields({ ...fields, ...part });
  const wrong = inputErrors(contract.finish.recordAir, inputOf(fields));
  const errors = isTried ? { ...command.details, ...wrong } : {};
  return (
    <FormBox
      title="Read the air"
      submitLabel="Record the air"
      command={command}
      onCancel={onClose}
      answer={<AirAnswer air={airFrom(fields)} finish={finish} />}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void command.run(inputOf(fields));
      }}
    >
      <FieldGrid>
        <NumberField
          label="Air, F"
          unit="F"
          required
          value={fields.airF}
          error={errors.airF}
          onChange={(airF) => set({ airF })}
        />
        <NumberField
          label="Humidity, percent"
          unit="%"
          required
          value={fields.humidityPercent}
          error={errors.humidityPercent}
          onChange={(humidityPercent) => set({ humidityPercent })}
        />
        <NumberField
          label="Surface of a bow, F"
          description="Empty once the bows have hung here for 2 h."
          unit="F"
          value={fields.surfaceF}
          error={errors.surfaceF}
          onChange={(surfaceF) => set({ surfaceF })}
        />
      </FieldGrid>
      <TextInput
        label="Note"
        value={fields.note}
        maxLength={1000}
        onChange={(event) => set({ note: event.currentTarget.value })}
      />
      <WhenField value={fields.at} error={errors.at} onChange={(at) => set({ at })} />
    </FormBox>
  );
}
