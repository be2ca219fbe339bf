import { Checkbox, Select, Textarea, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { messageMax } from '../../../../shared/contract/messages.ts';
import type { ContractOutputs } from '../../../../shared/contract/types.ts';
import { type PaperKind, paperChoices, paperKinds } from '../../../../shared/papers.ts';
import { type MessageStep, messageStepLabels, messageSteps } from '../../../../shared/wordings.ts';
import { orpc } from '../../../api/client.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { useOrder } from '../order-screen.tsx';
import { MessageActions } from './message-actions.tsx';
import classes from './messages.module.css';

const steps = messageSteps.map((value) => ({ value, label: messageStepLabels[value] }));
/** Papers a customer may get with a message. */
const toCustomer = paperKinds.filter((kind) => {
  const { about, copies } = paperChoices[kind];
  return about === 'order' && copies.includes('customer');
});

export interface Written {
  step: MessageStep;
  toWhom: string;
  subject: string;
  body: string;
  papers: PaperKind[];
}

/** Writes a message from the shop's wording of a step. The program itself sends nothing. */
export function MessageDialog({ first, onDone }: { first: MessageStep; onDone: () => void }) {
  const { order } = useOrder();
  const [step, setStep] = useState(first);
  const orderId = order.card.id;
  const draft = useQuery({
    ...orpc.messages.draft.queryOptions({ input: { orderId, step } }),
    gcTime: 0,
  });
  return (
    <Dialog onClose={onDone} size="xl" title={`Message, order ${order.card.number}`}>
      <div className={classes.form}>
        <Select
          label="What it is about"
          data={steps}
          value={step}
          allowDeselect={false}
          onChange={(value) => {
            const next = messageSteps.find((each) => each === value);
            if (next !== undefined) setStep(next);
          }}
        />
        {draft.isError ? (
          <ErrorNote error={draft.error} onAgain={() => void draft.refetch()} />
        ) : draft.data === undefined ? (
          <BusyNote>Writing the message ...</BusyNote>
        ) : (
          <MessageForm key={step} step={step} draft={draft.data} onDone={onDone} />
        )}
      </div>
    </Dialog>
  );
}

interface MessageFormProps {
  step: MessageStep;
  draft: ContractOutputs['messages']['draft'];
  onDone: () => void;
}

function MessageForm({ step, draft, onDone }: MessageFormProps) {
  const [written, setWritten] = useState<Written>({ step, ...draft });
  const [errors, setErrors] = useState<Record<string, string>>({});
  const set = (part: Partial<Written>) => setWritten((now) => ({ ...now, ...part }));
  return (
    <>
      <TextInput
        label="To"
        required
        maxLength={200}
        autoComplete="off"
        value={written.toWhom}
        error={errors.toWhom}
        onChange={(event) => set({ toWhom: event.currentTarget.value })}
      />
      <TextInput
        label="Subject"
        maxLength={300}
        autoComplete="off"
        value={written.subject}
        error={errors.subject}
        onChange={(event) => set({ subject: event.currentTarget.value })}
      />
      <Textarea
        label="Message"
        required
        maxLength={messageMax}
        autosize
        minRows={8}
        maxRows={20}
        value={written.body}
        error={errors.body}
        onChange={(event) => set({ body: event.currentTarget.value })}
      />
      <Checkbox.Group
        label="Papers to attach, when saved as a mail file"
        value={written.papers}
        error={errors.papers}
        onChange={(values) => set({ papers: toCustomer.filter((kind) => values.includes(kind)) })}
      >
        <div className={classes.papers}>
          {toCustomer.map((kind) => (
            <Checkbox key={kind} value={kind} label={paperChoices[kind].label} />
          ))}
        </div>
      </Checkbox.Group>
      <MessageActions written={written} onErrors={setErrors} onDone={onDone} />
    </>
  );
}
