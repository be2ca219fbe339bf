import { z } from '../../../shared/zod.ts';
import { BigButton } from './big-button.tsx';
import { BiteNeeds } from './bite-needs.tsx';
import type { FullStepProps } from './full-step.tsx';
import { useKeptEntry } from './kept-entry.ts';
import { ReadBack } from './read-back.tsx';
import { stepName } from './step-name.ts';
import { StopScreen } from './stop-screen.tsx';
import { StopWords } from './stop-words.tsx';
import { ToolChoice } from './tool-choice.tsx';
import { tools, useTool } from './tools.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useChoiceKeys } from './use-choice-keys.ts';

const sandEntry = z.strictObject({ isDone: z.boolean() });

/** Nothing more is cut: strip and sand, and say so once it is done. */
export function SandFull({ seen, writes, side, shell }: FullStepProps) {
  const { entry, change, clear } = useKeptEntry(stepName(seen), sandEntry, { isDone: false });
  const { tool, choose } = useTool('sand');
  const save = async (because: string) => {
    if (!writes.busy && (await writes.sanding(because, tool))) clear();
  };
  const back = () => change({ isDone: false });
  if (!entry.isDone) {
    return (
      <StopScreen
        kind="attention"
        words="STOP - SAND ONLY"
        actions={
          <>
            <Sanded onDone={() => change({ isDone: true })} />
            {side}
          </>
        }
      >
        <StopWords seen={seen} why={[]} isTold />
      </StopScreen>
    );
  }
  return shell(
    writes.refused.length > 0 ? (
      <BiteNeeds
        label="it is recorded"
        orderId={seen.orderId}
        missing={writes.refused}
        onPass={(because) => void save(because)}
      />
    ) : (
      <SandedSaid
        busy={writes.busy}
        tool={tool}
        onChoose={choose}
        onYes={() => void save('')}
        onNo={back}
      />
    ),
  );
}

function Sanded({ onDone }: { onDone: () => void }) {
  useBenchKeys({ onConfirm: onDone });
  return (
    <BigButton kind="main" keyHint="Enter" onClick={onDone}>
      Stripped and sanded
    </BigButton>
  );
}

interface SandedSaidProps {
  busy: boolean;
  tool: string;
  onChoose: (tool: string) => void;
  onYes: () => void;
  onNo: () => void;
}

function SandedSaid({ busy, tool, onChoose, onYes, onNo }: SandedSaidProps) {
  const picks = tools.sand.map((name) => () => onChoose(name));
  useChoiceKeys({ choices: picks, onConfirm: onYes, onBack: onNo });
  return (
    <ReadBack
      said="Both limbs stripped and sanded on every face."
      more={<ToolChoice use="sand" tool={tool} onChoose={onChoose} firstKey={1} />}
      yes="Yes, that is done"
      no="No, not yet"
      busy={busy}
      onYes={onYes}
      onNo={onNo}
    />
  );
}
