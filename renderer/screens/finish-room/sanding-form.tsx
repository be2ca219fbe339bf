import { TextInput } from '@mantine/core';
import { useState } from 'react';
import type { LastGrit, RoomBow } from '../../../shared/contract/finish.ts';
import { contract } from '../../../shared/contract/index.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import classes from './finish-room.module.css';
import { newSanding, type SandingFields, sandingInput } from './sanding-fields.ts';
import { GritTicks, LastGrits, PartTicks, SandedBow } from './sanding-inputs.tsx';
import { Tick, TickGroup } from './tick.tsx';
import { WhenField } from './when-field.tsx';

interface SandingFormProps {
  /** Bows to choose from; one alone is chosen already and not asked for. */
  bows: readonly RoomBow[];
  /** The one bow it is about, where it is about one. */
  orderId: string | null;
  lastGrits: (orderId: string) => readonly LastGrit[];
  grits: readonly SizedGrit[];
  times?: number;
  onDone: (advice: readonly string[]) => void;
  onClose: () => void;
}

/** One grit on parts of one bow. */
export function SandingForm(props: SandingFormProps) {
  const { bows, orderId, lastGrits, grits, times, onDone, onClose } = props;
  const [fields, setFields] = useState(() => newSanding(orderId));
  const [isTried, setTried] = useState(false);
  const command = useCommand(api.finish.recordSanding, {
    onDone: ({ advice }) => onDone(advice),
  });
  const set = (part: Partial<SandingFields>) => setFields({ ...fields, ...part });
  const input = sandingInput(fields);
  const wrong: Record<string, string> = {
    ...inputErrors(contract.finish.recordSanding, input),
    ...(fields.orderId === null ? { orderId: 'Choose the bow.' } : {}),
    ...(fields.grit === null ? { grit: 'Choose the grit.' } : {}),
  };
  const errors = isTried ? { ...command.details, ...wrong } : {};
  const part = { fields, onChange: set, errors };
  return (
    <FormBox
      title="Record sanding"
      submitLabel="Record the sanding"
      command={command}
      {...(times === undefined ? {} : { times })}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void command.run(input);
      }}
    >
      {orderId === null ? <SandedBow {...part} bows={bows} /> : null}
      {fields.orderId === null ? null : <LastGrits lastGrits={lastGrits(fields.orderId)} />}
      <PartTicks {...part} />
      <GritTicks {...part} grits={grits} />
      <p className={classes.quiet}>Limbs are sanded lengthwise only.</p>
      <TickGroup label="Afterwards">
        <Tick isOn={fields.wiped} onChange={(wiped) => set({ wiped })}>
          Wiped with solvent
        </Tick>
        <Tick isOn={fields.isLast} onChange={(isLast) => set({ isLast })}>
          This was the last grit before finish
        </Tick>
      </TickGroup>
      <FieldGrid>
        <NumberField
          label="Strokes over each face"
          description="Where they were counted, on both limbs: closed jobs teach how much they take off."
          value={fields.strokes}
          error={errors.strokes}
          onChange={(strokes) => set({ strokes })}
        />
        <TextInput
          label="Note"
          maxLength={1000}
          value={fields.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
      </FieldGrid>
      <WhenField value={fields.at} error={errors.at} onChange={(at) => set({ at })} />
    </FormBox>
  );
}
