import { z } from '../../../shared/zod.ts';
import { BigButton } from './big-button.tsx';
import type { FullStepProps } from './full-step.tsx';
import { nothingAnswered } from './glass-signs.ts';
import { GlassStep } from './glass-step.tsx';
import { useKeptEntry } from './kept-entry.ts';
import { stepName } from './step-name.ts';
import { StopScreen } from './stop-screen.tsx';
import { StopWords } from './stop-words.tsx';
import { useBenchKeys } from './use-bench-keys.ts';

const seenOrNot = z.boolean().nullable();
const glassEntry = z.strictObject({
  isUnstrung: z.boolean(),
  answers: z.strictObject({
    showThrough: seenOrNot,
    strands: seenOrNot,
    runOut: seenOrNot,
    exposedCore: seenOrNot,
  }),
  isReading: z.boolean(),
});

/** The bow is unstrung first; then the four signs are looked for. */
export function GlassFull({ seen, writes, side, shell }: FullStepProps) {
  const { entry, change, clear } = useKeptEntry(stepName(seen), glassEntry, {
    isUnstrung: false,
    answers: nothingAnswered,
    isReading: false,
  });
  if (!entry.isUnstrung) {
    return (
      <StopScreen
        kind="attention"
        words="UNSTRING - CHECK GLASS"
        actions={
          <>
            <Unstrung onDone={() => change({ ...entry, isUnstrung: true })} />
            {side}
          </>
        }
      >
        <StopWords seen={seen} why={[]} isTold />
      </StopScreen>
    );
  }
  return shell(
    <GlassStep
      answers={entry.answers}
      onChange={(answers) => change({ ...entry, answers })}
      isReading={entry.isReading}
      onReadBack={(isReading) => change({ ...entry, isReading })}
      busy={writes.busy}
      onSave={async () => {
        if (!writes.busy && (await writes.glass(entry.answers))) clear();
      }}
    />,
  );
}

function Unstrung({ onDone }: { onDone: () => void }) {
  useBenchKeys({ onConfirm: onDone });
  return (
    <BigButton kind="main" keyHint="Enter" onClick={onDone}>
      It is unstrung: look at the glass
    </BigButton>
  );
}
