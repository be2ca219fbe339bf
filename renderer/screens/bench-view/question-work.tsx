import { z } from '../../../shared/zod.ts';
import { useKeptEntry } from './kept-entry.ts';
import { QuestionStep } from './question-step.tsx';
import { ReadBack } from './read-back.tsx';
import type { Seen, SeenStep } from './seen.ts';
import { stepName } from './step-name.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import type { StepWrites } from './use-step-writes.ts';

type Step = Extract<SeenStep, { kind: 'questions' }>;

interface QuestionWorkProps {
  seen: Seen;
  step: Step;
  writes: StepWrites;
}

const answersEntry = z.record(z.string().max(40), z.boolean());

/** The questions one at a time, in their order; what follows from the answers is read back. */
export function QuestionWork({ seen, step, writes }: QuestionWorkProps) {
  const { entry, change, clear } = useKeptEntry(stepName(seen), answersEntry, {});
  const { questions } = step;
  const at = questions.findIndex(({ about }) => entry[about] === undefined);
  const forget = (about: string | undefined) => {
    if (about === undefined) return;
    const { [about]: _, ...rest } = entry;
    change(rest);
  };
  const asked = questions[at];
  if (asked === undefined) {
    return (
      <Answered
        questions={questions}
        answers={entry}
        busy={writes.busy}
        onYes={async () => {
          if (!writes.busy && (await writes.surprise(entry))) clear();
        }}
        onNo={() => forget(questions.at(-1)?.about)}
      />
    );
  }
  return (
    <QuestionStep
      question={asked.question}
      place={at + 1}
      count={questions.length}
      onAnswer={(isRight) => change({ ...entry, [asked.about]: isRight })}
      onBack={() => forget(questions[at - 1]?.about)}
    />
  );
}

interface AnsweredProps {
  questions: Step['questions'];
  answers: Record<string, boolean>;
  busy: boolean;
  onYes: () => void;
  onNo: () => void;
}

function Answered({ questions, answers, busy, onYes, onNo }: AnsweredProps) {
  useBenchKeys({ onConfirm: onYes, onBack: onNo });
  const wrong = questions.filter(({ about }) => answers[about] !== true);
  return (
    <ReadBack
      said={
        wrong.length === 0
          ? 'Everything is as it should be: the reading stands.'
          : 'The reading is struck out; put it right and weigh again.'
      }
      more={wrong.length === 0 ? null : <Wrong questions={wrong} />}
      busy={busy}
      onYes={onYes}
      onNo={onNo}
    />
  );
}

function Wrong({ questions }: { questions: Step['questions'] }) {
  return (
    <>
      {questions.map(({ about, question }) => (
        <p key={about}>{question} No.</p>
      ))}
    </>
  );
}
