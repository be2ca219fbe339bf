import { Radio, Textarea } from '@mantine/core';
import { useState } from 'react';
import { findingGrade } from '../../../../shared/contract/findings.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { noPlace, placeErrors, placeLine } from './finding-place.ts';
import { FindingPlaceFields } from './finding-place-fields.tsx';
import { type Grade, gradeLabels, gradeMeanings, gradeOrder } from './grades.ts';

const noteHints: Record<Grade, string> = {
  stop: 'What it is, how long and how deep.',
  watch: 'What it is and its measured size, so that the next look can tell whether it grew.',
  cosmetic: 'What it looks like.',
};

/** Writes down what was found on the bow, where, and how much it matters. */
export function FindingForm({ onDone }: { onDone: () => void }) {
  const { order } = useOrder();
  const [grade, setGrade] = useState<Grade | null>(null);
  const [place, setPlace] = useState(noPlace);
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.findings.add, onDone);
  const wrong = placeErrors(place);
  return (
    <FormBox
      title="Add a finding"
      submitLabel="Add the finding"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (grade === null || Object.keys(wrong).length > 0) return;
        void command.run({ orderId: order.card.id, grade, place: placeLine(place), note });
      }}
    >
      <Radio.Group
        size="md"
        label="How much it matters"
        required
        value={grade}
        error={isTried && grade === null ? 'Choose one.' : command.details.grade}
        onChange={(value) => setGrade(findingGrade.parse(value))}
      >
        {gradeOrder.map((value) => (
          <Radio
            key={value}
            value={value}
            label={gradeLabels[value]}
            description={gradeMeanings[value]}
          />
        ))}
      </Radio.Group>
      <FindingPlaceFields
        place={place}
        onChange={setPlace}
        errors={{
          ...(command.details.place === undefined ? {} : { words: command.details.place }),
          ...(isTried ? wrong : {}),
        }}
      />
      <Textarea
        label="What is seen"
        description={grade === null ? undefined : noteHints[grade]}
        maxLength={1000}
        autosize
        minRows={2}
        value={note}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}
