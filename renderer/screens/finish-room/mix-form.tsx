import { Select, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { FinishRoom } from '../../../shared/contract/finish.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { Against } from './against.tsx';
import { Cautions } from './cautions.tsx';
import classes from './finish-room.module.css';
import { bowsFor, isAmountGiven, type MixFields, mixable, mixInput, newMix } from './mix-fields.ts';
import { MixPlan } from './mix-plan.tsx';
import { MixWanted } from './mix-wanted.tsx';
import { WhenField } from './when-field.tsx';

/** A batch that was just mixed. */
interface Mixed {
  id: string;
  name: string;
}

interface MixFormProps {
  room: FinishRoom;
  systemId: string | null;
  onMixed: (batch: Mixed) => void;
  onClose: () => void;
}

/** Mixes a batch: reckons it, issues its parts and starts its clock with one button. */
export function MixForm({ room, systemId, onMixed, onClose }: MixFormProps) {
  const systems = mixable(room.systems);
  const first = systems.find(({ id }) => id === systemId) ?? systems[0];
  const [fields, setFields] = useState(() => newMix(room, first?.id ?? null));
  const [isTried, setTried] = useState(false);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const command = useCommand(api.finish.mix, {
    onDone: (result) => {
      if (result.outcome === 'mixed') onMixed(result);
      else setRefused(result.troubles);
    },
  });
  const set = (part: Partial<MixFields>) => {
    setFields({ ...fields, ...part });
    setRefused([]);
  };
  const chosen = systems.find(({ id }) => id === fields.systemId);
  const input = mixInput(fields);
  const wrong: Record<string, string> = {
    ...inputErrors(contract.finish.mix, input),
    ...(isAmountGiven(fields) ? {} : { 'wanted.orderIds': 'Tick a bow, or give an area.' }),
  };
  const errors = isTried ? { ...command.details, ...wrong } : {};
  return (
    <FormBox
      title="Mix a batch"
      submitLabel="Mix, issue, start the clock"
      command={command}
      onCancel={onClose}
      answer={
        <>
          <Against title="It was not mixed." sentences={refused} />
          <MixPlan fields={fields} />
        </>
      }
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void command.run(input);
      }}
    >
      <FieldGrid>
        <Select
          label="Finish"
          required
          data={systems.map(({ id, name }) => ({ value: id, label: name }))}
          value={fields.systemId}
          error={errors.finishSystemId}
          onChange={(id) => set({ systemId: id, orderIds: [] })}
        />
        <NumberField
          label="Temperature of the mix, F"
          description="The warmest it stands at: it sets the pot life."
          unit="F"
          required
          value={fields.mixF}
          error={errors.mixF}
          onChange={(mixF) => set({ mixF })}
        />
      </FieldGrid>
      <Cautions cautions={chosen?.cautions ?? []} />
      <MixWanted
        fields={fields}
        onChange={set}
        errors={errors}
        bows={bowsFor(room.bows, fields.systemId)}
      />
      {errors['wanted.orderIds'] === undefined ? null : (
        <p role="alert" className={classes.text} style={{ color: 'var(--stop)' }}>
          {errors['wanted.orderIds']}
        </p>
      )}
      <FieldGrid>
        <TextInput
          label="Name of the batch"
          description="Empty: named by day and count."
          maxLength={120}
          autoComplete="off"
          value={fields.name}
          error={errors.name}
          onChange={(event) => set({ name: event.currentTarget.value })}
        />
        <TextInput
          label="Note"
          maxLength={1000}
          value={fields.note}
          error={errors.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
      </FieldGrid>
      <WhenField value={fields.at} error={errors.at} onChange={(at) => set({ at })} />
    </FormBox>
  );
}
