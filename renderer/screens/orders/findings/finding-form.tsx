import { Radio, Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import { findingGrade } from '../../../../shared/contract/findings.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { type Grade, gradeLabels, gradeMeanings, gradeOrder } from './grades.ts';

/** Writes down what was found on the bow, where, and how much it matters. */
export function FindingForm({ onDone }: { onDone: () => void }) {
  const { order } = useOrder();
  const [grade, setGrade] = useState<Grade | null>(null);
  const [place, setPlace] = useState('');
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.findings.add, onDone);
  const errors = {
    grade: isTried && grade === null ? 'Choose one.' : command.details.grade,
    place: isTried && place.trim() === '' ? 'Say where on the bow.' : command.details.place,
  };
  return (
    <FormBox
      title="Add a finding"
      submitLabel="Add the finding"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (grade === null || place.trim() === '') return;
        void command.run({ orderId: order.card.id, grade, place, note });
      }}
    >
      <Radio.Group
        size="md"
        label="How much it matters"
        required
        value={grade}
        error={errors.grade}
        onChange={(value) => setGrade(findingGrade.parse(value))}
      >
        {gradeOrder.map((value) => (
          <Radio
            key={value}
            value={value}
            mt="sm"
            label={gradeLabels[value]}
            description={gradeMeanings[value]}
          />
        ))}
      </Radio.Group>
      <TextInput
        label="Place on the bow"
        placeholder="Upper limb, belly, 4 in from the fade"
        required
        maxLength={200}
        autoComplete="off"
        value={place}
        error={errors.place}
        onChange={(event) => setPlace(event.currentTarget.value)}
      />
      <Textarea
        label="What is seen"
        maxLength={1000}
        value={note}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}
