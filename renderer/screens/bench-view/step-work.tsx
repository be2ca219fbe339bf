import { type BiteEntry, biteEntry, freshBite } from './bite-entry.ts';
import { BiteNeeds } from './bite-needs.tsx';
import { BiteStep } from './bite-step.tsx';
import { IdleStep } from './idle-step.tsx';
import { useKeptEntry } from './kept-entry.ts';
import { QuestionWork } from './question-work.tsx';
import { freshRemeasure, type RemeasureEntry, remeasureEntry } from './remeasure-entry.ts';
import { RemeasureStep } from './remeasure-step.tsx';
import type { Seen, SeenStep } from './seen.ts';
import { stepName } from './step-name.ts';
import { type TillerEntry, tillerEntry } from './tiller-entry.ts';
import { TillerStep } from './tiller-step.tsx';
import type { StepWrites } from './use-step-writes.ts';

interface WorkProps<Kind extends SeenStep['kind']> {
  seen: Seen;
  step: Extract<SeenStep, { kind: Kind }>;
  writes: StepWrites;
}

function BiteWork({ seen, step, writes }: WorkProps<'bite'>) {
  const { entry, change, clear } = useKeptEntry<BiteEntry>(stepName(seen), biteEntry, freshBite);
  if (seen.missing.length > 0 && entry.because === '') {
    return (
      <BiteNeeds
        label={step.isLightPass ? 'this pass' : 'this bite'}
        orderId={seen.orderId}
        missing={seen.missing}
        onPass={(because) => change({ ...entry, because })}
      />
    );
  }
  return (
    <BiteStep
      work={step}
      entry={entry}
      onChange={change}
      step={step.step}
      band={step.band}
      doneLabel={step.isLightPass ? 'Light pass done' : 'Cut done - re-measure'}
      busy={writes.busy}
      isLightPass={step.isLightPass}
      onSave={async (other, tool) => {
        if (await writes.bite(other, entry.because, tool)) clear();
      }}
    />
  );
}

function RemeasureWork({ seen, step, writes }: WorkProps<'remeasure'>) {
  const { entry, change, clear } = useKeptEntry<RemeasureEntry>(
    stepName(seen),
    remeasureEntry,
    freshRemeasure,
  );
  return (
    <RemeasureStep
      places={step.places}
      faces={step.faces}
      entry={entry}
      onChange={change}
      busy={writes.busy}
      onSave={async () => {
        if (!writes.busy && (await writes.remeasure(entry))) clear();
      }}
    />
  );
}

function TillerWork({ seen, writes, braceIn }: WorkProps<'tiller'> & { braceIn: number | null }) {
  const { entry, change, clear } = useKeptEntry<TillerEntry>(stepName(seen), tillerEntry, {
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
        if (!writes.busy && (await writes.tiller(entry, braceIn))) clear();
      }}
    />
  );
}

interface StepWorkProps {
  seen: Seen;
  writes: StepWrites;
  /** Brace height of the last weighing, inches. */
  braceIn: number | null;
  onWeigh: () => void;
}

/** What the hands do at this step; weighing and full screens have a place of their own. */
export function StepWork(props: StepWorkProps) {
  return <Work {...props} key={stepName(props.seen)} />;
}

function Work({ seen, writes, braceIn, onWeigh }: StepWorkProps) {
  const { step } = seen;
  switch (step.kind) {
    case 'bite':
      return <BiteWork seen={seen} step={step} writes={writes} />;
    case 'remeasure':
      return <RemeasureWork seen={seen} step={step} writes={writes} />;
    case 'tiller':
      return <TillerWork seen={seen} step={step} writes={writes} braceIn={braceIn} />;
    case 'questions':
      return <QuestionWork seen={seen} step={step} writes={writes} />;
    case 'idle':
      return <IdleStep step={step} onWeigh={onWeigh} />;
    case 'weigh':
    case 'glass':
    case 'sand':
    case 'stop':
      return null;
  }
}
