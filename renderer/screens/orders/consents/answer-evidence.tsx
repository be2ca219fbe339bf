import { Select, Textarea, TextInput } from '@mantine/core';
import { channelLabels, channels } from '../../../../shared/consents.ts';
import type { Customer } from '../../../../shared/contract/customers.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { type AnswerFields, knownContact } from './answer-fields.ts';
import { AnswerFile } from './answer-file.tsx';
import { SignaturePad } from './signature-pad.tsx';

const channelWords = channels.map((value) => ({ value, label: channelLabels[value] }));

interface AnswerEvidenceProps {
  fields: AnswerFields;
  set: (part: Partial<AnswerFields>) => void;
  errors: Record<string, string>;
  customer: Customer | null;
  orderId: string;
}

/** When, by whom, how, and in which words the customer answered. */
export function AnswerEvidence({ fields, set, errors, customer, orderId }: AnswerEvidenceProps) {
  const isAfar = fields.channel !== 'in-person';
  return (
    <>
      <FieldGrid>
        <Select
          label="How the answer came"
          data={channelWords}
          value={fields.channel}
          onChange={(channel) => {
            if (channel === null) return;
            const isOwn = fields.contact === knownContact(fields.channel, customer);
            set({ channel, ...(isOwn ? { contact: knownContact(channel, customer) } : {}) });
          }}
        />
        <TextInput
          type="datetime-local"
          label="When it was given"
          required
          value={fields.answeredAt}
          error={errors.answeredAt}
          onChange={(event) => set({ answeredAt: event.currentTarget.value })}
        />
        <TextInput
          label="Who answered"
          required
          maxLength={120}
          autoComplete="off"
          value={fields.answeredBy}
          error={errors.answeredBy}
          onChange={(event) => set({ answeredBy: event.currentTarget.value })}
        />
        {isAfar ? (
          <TextInput
            label={fields.channel === 'phone' ? 'Number called' : 'Address it came from'}
            required
            maxLength={200}
            autoComplete="off"
            value={fields.contact}
            error={errors.contact}
            onChange={(event) => set({ contact: event.currentTarget.value })}
          />
        ) : null}
        <TextInput
          label="Change of price, dollars"
          description="Empty for none; -10 when it gets cheaper"
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          autoComplete="off"
          value={fields.costChange}
          error={errors.costChange ?? errors.costChangeCents}
          onChange={(event) => set({ costChange: event.currentTarget.value })}
        />
      </FieldGrid>
      <Textarea
        label={fields.channel === 'email' ? 'Words of the message, pasted' : 'Words agreed'}
        required={isAfar}
        maxLength={2000}
        value={fields.words}
        error={errors.words}
        onChange={(event) => set({ words: event.currentTarget.value })}
      />
      {isAfar ? null : (
        <SignaturePad
          value={fields.signed}
          onChange={(signed) => set({ signed })}
          error={errors.signature}
        />
      )}
      {fields.channel === 'phone' ? null : (
        <AnswerFile
          orderId={orderId}
          value={fields.attachmentId}
          onChange={(attachmentId) => set({ attachmentId })}
          error={errors.attachmentId}
        />
      )}
    </>
  );
}
