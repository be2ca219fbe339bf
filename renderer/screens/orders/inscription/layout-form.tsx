import { Radio, Textarea, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import {
  letteringManner,
  letteringMannerLabels,
  letteringSurface,
  letteringSurfaceLabels,
} from '../../../../shared/inscription.ts';
import { api, orpc } from '../../../api/client.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { omit } from '../../../parts/omit.ts';
import { VoidsNote } from '../consents/voids-note.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { MakerMarkChoice, PositionChoice } from './layout-choices.tsx';
import { emptyLayout, isWhole, type LayoutDraft, layoutErrors } from './layout-fields.ts';

/** Where and how the lines are put on the bow. The old marking is filled in from the records. */
export function LayoutForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const suggested = useQuery(
    orpc.inscriptions.suggest.queryOptions({ input: { orderId: order.card.id } }),
  );
  const layout = order.inscriptionLayout;
  if (layout !== null) {
    const initial = omit(layout, 'id', 'rowVersion', 'recordedAt', 'personName');
    return <Form initial={initial} onClose={onClose} photographs={suggested.data?.photographs} />;
  }
  if (suggested.error !== null) {
    return <ErrorNote error={suggested.error} onAgain={() => void suggested.refetch()} />;
  }
  if (suggested.data === undefined) return <BusyNote>Reading the old marking ...</BusyNote>;
  const { oldMarking, photographs } = suggested.data;
  return (
    <Form initial={{ ...emptyLayout, oldMarking }} onClose={onClose} photographs={photographs} />
  );
}

interface FormProps {
  initial: LayoutDraft;
  onClose: () => void;
  photographs: number | undefined;
}

function Form({ initial, onClose, photographs }: FormProps) {
  const { order } = useOrder();
  // As it was when the form opened: somebody else's change must be noticed on saving.
  const [base] = useState(order.inscriptionLayout);
  const [draft, setDraft] = useState(initial);
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.inscriptions.setLayout, onClose);
  const set = (part: Partial<LayoutDraft>) => setDraft((now) => ({ ...now, ...part }));
  const errors = isTried ? { ...command.details, ...layoutErrors(draft) } : command.details;
  const latest = order.inscriptionLayout?.rowVersion ?? null;
  const rowVersion = command.error === null ? (base?.rowVersion ?? null) : latest;
  return (
    <FormBox
      title="Where and how it is lettered"
      submitLabel="Save where and how"
      command={command}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (isWhole(draft)) void command.run({ orderId: order.card.id, rowVersion, ...draft });
      }}
    >
      <PositionChoice
        value={draft.position}
        error={errors.position}
        onChange={(position) => set({ position })}
      />
      <MakerMarkChoice
        value={draft.makerMark}
        error={errors.makerMark}
        onChange={(makerMark) => set({ makerMark })}
      />
      <VoidsNote
        orderId={order.card.id}
        change={{ position: draft.position.trim(), makerMark: draft.makerMark.trim() }}
      />
      <CraftFields draft={draft} set={set} errors={errors} photographs={photographs} />
    </FormBox>
  );
}

interface CraftProps {
  draft: LayoutDraft;
  set: (part: Partial<LayoutDraft>) => void;
  errors: Record<string, string>;
  photographs: number | undefined;
}

/** What is the shop's craft, and what is kept; the customer's approval does not rest on it. */
function CraftFields({ draft, set, errors, photographs }: CraftProps) {
  return (
    <>
      <FieldGrid>
        <Radio.Group
          label="Surface"
          value={draft.surface}
          onChange={(surface) => set({ surface: letteringSurface.parse(surface) })}
        >
          {letteringSurface.options.map((each) => (
            <Radio key={each} value={each} label={letteringSurfaceLabels[each]} />
          ))}
        </Radio.Group>
        <Radio.Group
          label="How"
          value={draft.manner}
          onChange={(manner) => set({ manner: letteringManner.parse(manner) })}
        >
          {letteringManner.options.map((each) => (
            <Radio key={each} value={each} label={letteringMannerLabels[each]} />
          ))}
        </Radio.Group>
        <TextInput
          label="Ink"
          description="Try it under the finish on scrap first: some inks run in solvent."
          maxLength={120}
          value={draft.ink}
          error={errors.ink}
          onChange={(event) => set({ ink: event.currentTarget.value })}
        />
        <NumberField
          label="Height of a capital, inches"
          unit="in"
          value={draft.letterHeightIn}
          error={errors.letterHeightIn}
          onChange={(letterHeightIn) => set({ letterHeightIn })}
        />
      </FieldGrid>
      <Textarea
        label="Old marking, kept for the record"
        description={photographs === undefined ? undefined : photographsText(photographs)}
        maxLength={1000}
        autosize
        minRows={2}
        value={draft.oldMarking}
        error={errors.oldMarking}
        onChange={(event) => set({ oldMarking: event.currentTarget.value })}
      />
      <Textarea
        label="Note"
        maxLength={1000}
        autosize
        value={draft.note}
        error={errors.note}
        onChange={(event) => set({ note: event.currentTarget.value })}
      />
    </>
  );
}

function photographsText(count: number): string {
  if (count === 0)
    return 'No photograph on this order yet: take one before anything is sanded off.';
  return `${count} ${count === 1 ? 'photograph' : 'photographs'} on this order: see that one shows it.`;
}
