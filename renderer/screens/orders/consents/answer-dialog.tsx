import { Radio } from '@mantine/core';
import dayjs from 'dayjs';
import { useState } from 'react';
import { type Answer, answer as answerSchema, consentLabels } from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import { api } from '../../../api/client.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { AnswerEvidence } from './answer-evidence.tsx';
import {
  type AnswerFields,
  answerErrors,
  costChangeCents,
  knownContact,
  possibleAnswers,
  signatureToSend,
} from './answer-fields.ts';
import { unsigned } from './signature-fields.ts';

const answerWords: Record<Answer, string> = {
  granted: 'Granted: the customer said yes to this text',
  declined: 'Declined: the customer said no',
  withdrawn: 'Withdrawn: the customer takes the yes back',
};

/** Writes down what the customer said to exactly the text shown. */
export function AnswerDialog({ consent, onDone }: { consent: Consent; onDone: () => void }) {
  const about = consentLabels[consent.kind].toLowerCase();
  return (
    <Dialog onClose={onDone} size="xl" title={`Record the answer: ${about}`}>
      <AnswerForm consent={consent} onDone={onDone} />
    </Dialog>
  );
}

function AnswerForm({ consent, onDone }: { consent: Consent; onDone: () => void }) {
  const { order } = useOrder();
  const possible = possibleAnswers(consent);
  const [fields, setFields] = useState<AnswerFields>(() => ({
    answer: possible.length === 1 ? (possible[0] ?? null) : null,
    channel: 'phone',
    answeredAt: dayjs().format('YYYY-MM-DDTHH:mm'),
    answeredBy: order.customer?.name ?? '',
    contact: knownContact('phone', order.customer),
    words: '',
    costChange: '',
    signed: unsigned,
    attachmentId: null,
  }));
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.consents.answer, onDone);
  const set = (part: Partial<AnswerFields>) => setFields((now) => ({ ...now, ...part }));
  const errors = { ...command.details, ...(isTried ? answerErrors(fields) : {}) };
  const send = () => {
    setTried(true);
    const { answer, costChange, answeredAt, signed: _, ...rest } = fields;
    const cents = costChangeCents(costChange);
    if (answer === null || cents === null || Object.keys(answerErrors(fields)).length > 0) return;
    void command.run({
      consentId: consent.id,
      textSha256: consent.textSha256,
      answer,
      ...rest,
      answeredAt: new Date(answeredAt).toISOString(),
      costChangeCents: cents,
      signature: signatureToSend(fields),
    });
  };
  return (
    <FormBox
      plain
      hideTitle
      title={consentLabels[consent.kind]}
      submitLabel="Record the answer"
      command={command}
      onCancel={onDone}
      onSubmit={send}
    >
      <p className={classes.words}>{consent.text}</p>
      {consent.state === 'outdated' ? (
        <Mark kind="attention">
          What this text refers to has changed since. A yes to it no longer helps: ask again.
        </Mark>
      ) : null}
      <Radio.Group
        size="md"
        label="Answer"
        required
        value={fields.answer}
        error={errors.answer}
        onChange={(value) => set({ answer: answerSchema.parse(value) })}
      >
        {possible.map((value) => (
          <Radio key={value} value={value} label={answerWords[value]} />
        ))}
      </Radio.Group>
      <AnswerEvidence
        fields={fields}
        set={set}
        errors={errors}
        customer={order.customer}
        orderId={order.card.id}
      />
    </FormBox>
  );
}
