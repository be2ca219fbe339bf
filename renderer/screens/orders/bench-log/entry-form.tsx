import { Radio, Select, Textarea, TextInput } from '@mantine/core';
import { useEffect, useState } from 'react';
import { type EntryItem, entryItem, entryKinds } from '../../../../shared/entries.ts';
import type { MissingItem } from '../../../../shared/gates.ts';
import { api } from '../../../api/client.ts';
import { today } from '../../../parts/days.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { gateText } from '../../../parts/gate-text.ts';
import type { Opening } from '../open-forms.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { offeredGroups } from './entry-groups.ts';
import { RefusedStep } from './refused-step.tsx';

const choices = offeredGroups.map((group) => ({
  group: `Before ${gateText(group.gate)}`,
  items: group.items.map((value) => ({ value, label: entryKinds[value].label })),
}));

/** What an asking names, where it is written here by hand. */
function itemFrom(opens: string | null): EntryItem | null {
  const read = entryItem.safeParse(opens);
  return read.success && entryKinds[read.data].retired === null ? read.data : null;
}

interface EntryFields {
  item: EntryItem;
  outcome: 'ok' | 'not-ok';
  doneOn: string;
  note: string;
}

function startEntry(item: EntryItem): EntryFields {
  return { item, outcome: 'ok', doneOn: today(), note: '' };
}

/** Writes one dated entry. A step of work that may not be done yet lists what is missing. */
export function EntryForm({ opening, first }: { opening: Opening; first: EntryItem }) {
  const { order, close } = useOrder();
  const [fields, setFields] = useState(() => startEntry(itemFrom(opening.opens) ?? first));
  const [refused, setRefused] = useState<MissingItem[]>([]);
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.entries.record, (result) => {
    if (result.outcome === 'refused') setRefused(result.missing);
    else close('bench-log');
  });
  const set = (part: Partial<EntryFields>) => setFields((now) => ({ ...now, ...part }));
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking may name another entry.
  useEffect(() => {
    const item = itemFrom(opening.opens);
    if (item !== null) set({ item });
    setRefused([]);
  }, [opening.times]);

  const kind = entryKinds[fields.item];
  const isThin = kind.noteRequired && fields.note.trim() === '';
  const record = (override?: { reason: string }) =>
    void command.run({
      orderId: order.card.id,
      ...fields,
      ...(override === undefined ? {} : { override }),
    });
  return (
    <>
      <FormBox
        title={`Record: ${kind.label}`}
        submitLabel="Record"
        command={command}
        times={opening.times}
        onCancel={() => close('bench-log')}
        onSubmit={() => {
          setTried(true);
          if (!isThin && fields.doneOn !== '') record();
        }}
      >
        <EntryInputs
          fields={fields}
          set={set}
          errors={{
            ...command.details,
            ...(isTried && isThin ? { note: `Write a few words: ${kind.hint}` } : {}),
            ...(isTried && fields.doneOn === '' ? { doneOn: 'Give a day.' } : {}),
          }}
        />
      </FormBox>
      {refused.length > 0 ? (
        <RefusedStep
          label={kind.label}
          missing={refused}
          command={command}
          onOverride={(reason) => record({ reason })}
        />
      ) : null}
    </>
  );
}

interface EntryInputsProps {
  fields: EntryFields;
  set: (part: Partial<EntryFields>) => void;
  errors: Record<string, string>;
}

function EntryInputs({ fields, set, errors }: EntryInputsProps) {
  const kind = entryKinds[fields.item];
  return (
    <>
      <FieldGrid>
        <Select
          label="What"
          data={choices}
          value={fields.item}
          searchable
          error={errors.item}
          onChange={(value) => set({ item: itemFrom(value) ?? fields.item })}
        />
        <TextInput
          type="date"
          label="Day"
          value={fields.doneOn}
          error={errors.doneOn}
          onChange={(event) => set({ doneOn: event.currentTarget.value })}
        />
      </FieldGrid>
      <Radio.Group
        size="md"
        label="Outcome"
        value={fields.outcome}
        onChange={(value) => set({ outcome: value === 'ok' ? 'ok' : 'not-ok' })}
      >
        <div style={{ display: 'flex', gap: 24, paddingTop: 8 }}>
          <Radio value="ok" label="In order" />
          <Radio value="not-ok" label="Not in order" />
        </div>
      </Radio.Group>
      <Textarea
        label="Note"
        description={kind.hint}
        required={kind.noteRequired}
        maxLength={1000}
        value={fields.note}
        error={errors.note}
        onChange={(event) => set({ note: event.currentTarget.value })}
      />
    </>
  );
}
