import { z } from '../../../shared/zod.ts';
import { type BiteEntry, biteEntry, freshBite } from './bite-entry.ts';
import { BiteStep } from './bite-step.tsx';
import { type GlassAnswers, nothingAnswered } from './glass-signs.ts';
import { GlassStep } from './glass-step.tsx';
import { useKeptEntry } from './kept-entry.ts';
import { QuestionStep } from './question-step.tsx';
import { type RemeasureEntry, remeasureEntry } from './remeasure-entry.ts';
import { RemeasureStep } from './remeasure-step.tsx';
import type { Seen, SeenStep } from './seen.ts';
import { type TillerEntry, tillerEntry } from './tiller-entry.ts';
import { TillerStep } from './tiller-step.tsx';

/** What the steps write. Each answers whether it was carried out; the entry is kept until then. */
export interface StepWrites {
  busy: boolean;
  bite: (other: { upper: number; lower: number } | null) => Promise<boolean>;
  remeasure: (widthsIn: Record<string, number>) => Promise<boolean>;
  glass: (answers: GlassAnswers) => Promise<boolean>;
  tiller: (entry: TillerEntry) => Promise<boolean>;
  surprise: (answers: Record<string, boolean>) => Promise<boolean>;
}

interface WorkProps<Kind extends SeenStep['kind']> {
  seen: Seen;
  step: Extract<SeenStep, { kind: Kind }>;
  writes: StepWrites;
}

/**
 * Where an entry belongs: a bite to the very advice it follows, widths to their cut, answers to
 * their reading. What others write meanwhile loses no width that was already measured.
 */
function nameOf({ orderId, advice, step }: Seen): string {
  const start = `${orderId}-${step.kind}`;
  switch (step.kind) {
    case 'bite':
      return `${start}-${advice}`;
    case 'remeasure':
      return `${start}-${step.removalId}`;
    case 'questions':
      return `${start}-${step.readingId}`;
    default:
      return start;
  }
}

export function BiteWork({ seen, step, writes }: WorkProps<'bite'>) {
  const { entry, change, clear } = useKeptEntry<BiteEntry>(nameOf(seen), biteEntry, freshBite);
  return (
    <BiteStep
      work={step}
      entry={entry}
      onChange={change}
      step={step.step}
      doneLabel={step.isLightPass ? 'Light pass done' : 'Cut done - re-measure'}
      busy={writes.busy}
      onSave={async (other) => {
        if (await writes.bite(other)) clear();
      }}
    />
  );
}

export function RemeasureWork({ seen, step, writes }: WorkProps<'remeasure'>) {
  const { entry, change, clear } = useKeptEntry<RemeasureEntry>(nameOf(seen), remeasureEntry, {
    widthsIn: {},
    isReading: false,
    at: null,
  });
  return (
    <RemeasureStep
      places={step.places}
      entry={entry}
      onChange={change}
      busy={writes.busy}
      onSave={async () => {
        if (!writes.busy && (await writes.remeasure(entry.widthsIn))) clear();
      }}
    />
  );
}

const seenOrNot = z.boolean().nullable();
const glassEntry = z.strictObject({
  answers: z.strictObject({
    showThrough: seenOrNot,
    strands: seenOrNot,
    runOut: seenOrNot,
    exposedCore: seenOrNot,
  }),
  isReading: z.boolean(),
});

export function GlassWork({ seen, writes }: WorkProps<'glass'>) {
  const { entry, change, clear } = useKeptEntry(nameOf(seen), glassEntry, {
    answers: nothingAnswered,
    isReading: false,
  });
  return (
    <GlassStep
      answers={entry.answers}
      onChange={(answers) => change({ ...entry, answers })}
      isReading={entry.isReading}
      onReadBack={(isReading) => change({ ...entry, isReading })}
      busy={writes.busy}
      onSave={async () => {
        if (!writes.busy && (await writes.glass(entry.answers))) clear();
      }}
    />
  );
}

export function TillerWork({ seen, writes }: WorkProps<'tiller'>) {
  const { entry, change, clear } = useKeptEntry<TillerEntry>(nameOf(seen), tillerEntry, {
    tillerIn: seen.tiller?.nowIn ?? 0,
    isTaken: false,
    upperTrack: null,
    lowerTrack: null,
    isReading: false,
  });
  return (
    <TillerStep
      entry={entry}
      onChange={change}
      busy={writes.busy}
      onSave={async () => {
        if (!writes.busy && (await writes.tiller(entry))) clear();
      }}
    />
  );
}

const answersEntry = z.record(z.string().max(40), z.boolean());

/** The questions one at a time, in their order; the last answer saves them all. */
export function QuestionsWork({ seen, step, writes }: WorkProps<'questions'>) {
  const { entry, change, clear } = useKeptEntry(nameOf(seen), answersEntry, {});
  const { questions } = step;
  const at = questions.findIndex(({ about }) => entry[about] === undefined);
  const place = at === -1 ? questions.length - 1 : at;
  const asked = questions[place];
  if (asked === undefined) return null;
  const answer = async (isRight: boolean) => {
    const answers = { ...entry, [asked.about]: isRight };
    change(answers);
    const isLast = questions.every(({ about }) => answers[about] !== undefined);
    if (isLast && !writes.busy && (await writes.surprise(answers))) clear();
  };
  return (
    <QuestionStep
      question={asked.question}
      place={place + 1}
      count={questions.length}
      onAnswer={(isRight) => void answer(isRight)}
      onBack={() => {
        const before = questions[place - 1];
        if (before === undefined) return;
        const { [before.about]: _, ...rest } = entry;
        change(rest);
      }}
    />
  );
}

/** What the hands do at this step; weighing and stops have a place of their own. */
export function StepWork({ seen, writes }: { seen: Seen; writes: StepWrites }) {
  const { step } = seen;
  const key = nameOf(seen);
  switch (step.kind) {
    case 'bite':
      return <BiteWork key={key} seen={seen} step={step} writes={writes} />;
    case 'remeasure':
      return <RemeasureWork key={key} seen={seen} step={step} writes={writes} />;
    case 'glass':
      return <GlassWork key={key} seen={seen} step={step} writes={writes} />;
    case 'tiller':
      return <TillerWork key={key} seen={seen} step={step} writes={writes} />;
    case 'questions':
      return <QuestionsWork key={key} seen={seen} step={step} writes={writes} />;
    case 'weigh':
    case 'stop':
    case 'done':
      return null;
  }
}
