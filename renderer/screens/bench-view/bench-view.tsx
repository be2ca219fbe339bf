import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Scale } from '../../../shared/contract/scales.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { BenchFrame } from './bench-frame.tsx';
import { BenchShell } from './bench-shell.tsx';
import { BigButton } from './big-button.tsx';
import { pulledWeights } from './pulls.ts';
import type { Seen } from './seen.ts';
import { numberRow, tillerLine } from './seen-text.ts';
import { StopScreen } from './stop-screen.tsx';
import { StrikeHere } from './strike-here.tsx';
import { UndoPanel } from './undo-panel.tsx';
import type { useAdviceChange } from './use-advice-change.ts';
import { useBenchKeys, useBenchListener } from './use-bench-keys.ts';
import { useOpenBow } from './use-open-bow.ts';
import { useWeighEntry, WeighHere } from './weigh-here.tsx';
import { weighPrefill } from './weigh-prefill.ts';

type Mode = 'step' | 'weigh' | 'undo' | 'strike';

interface BenchViewProps {
  seen: Seen;
  order: OrderDetail;
  scales: readonly Scale[];
  change: ReturnType<typeof useAdviceChange>;
  /** What the hands do at the steps other than weighing. */
  work: ReactNode;
}

/** The glove view of one bow: what to do now, and always the same ways to weigh and to take back. */
export function BenchView({ seen, order, scales, change, work }: BenchViewProps) {
  const [mode, setMode] = useState<Mode>('step');
  const [, go] = useLocation();
  const { open, trouble } = useOpenBow();
  // The work order of this very bow brings back what its hands do next.
  useBenchListener((number) => (number === seen.number ? setMode('step') : void open(number)));
  const prefill = weighPrefill(order, scales);
  const jobDrawIn = seen.drawIn ?? 28;
  const weigh = useWeighEntry(seen.orderId, prefill, jobDrawIn);
  const { step } = seen;
  const isBarred = step.kind === 'stop' && step.tone === 'stop';
  // Pulls that were begun are shown again, whatever took the screen away.
  const isWeighing =
    !isBarred &&
    (mode === 'weigh' ||
      (mode === 'step' && (step.kind === 'weigh' || weigh.entry.pulls.length > 0)));
  const back = () => setMode('step');
  const side = (
    <>
      {mode === 'step' && !isWeighing && !isBarred ? (
        <BigButton onClick={() => setMode('weigh')}>Weigh again</BigButton>
      ) : null}
      {isWeighing && step.kind !== 'weigh' ? (
        <BigButton
          onClick={() => {
            weigh.clear();
            back();
          }}
        >
          Do not weigh
        </BigButton>
      ) : null}
      <BigButton onClick={() => setMode(mode === 'undo' ? 'step' : 'undo')}>
        {mode === 'undo' ? 'Back' : 'Undo'}
      </BigButton>
      <BigButton onClick={() => setMode(mode === 'strike' ? 'step' : 'strike')}>
        {mode === 'strike' ? 'Back' : 'Strike out'}
      </BigButton>
    </>
  );
  const shown =
    mode === 'undo' ? (
      <UndoPanel
        orderId={seen.orderId}
        onClose={back}
        onStrikeOut={() => setMode('strike')}
        watch={change}
      />
    ) : mode === 'strike' ? (
      <StrikeHere order={order} watch={change} onClose={back} />
    ) : isWeighing ? (
      <WeighHere
        orderId={seen.orderId}
        jobDrawIn={jobDrawIn}
        prefill={prefill}
        watch={change}
        entry={weigh.entry}
        onChange={weigh.change}
        onClear={weigh.clear}
        onSaved={back}
      />
    ) : (
      work
    );
  return (
    <BenchFrame
      title={`${seen.number} ${seen.customer}`}
      about={seen.bow}
      back={{ href: '/bench', label: 'Bows' }}
    >
      {trouble === null ? null : <ErrorNote error={trouble} />}
      {step.kind === 'stop' && mode === 'step' && !isWeighing ? (
        <StopScreen
          kind={step.tone}
          words={step.words}
          actions={
            <>
              {step.office === null ? null : (
                <OfficeButton {...step} office={step.office} go={go} />
              )}
              {side}
            </>
          }
        >
          {step.why.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </StopScreen>
      ) : (
        <BenchShell
          sentence={isWeighing ? `Weigh at ${jobDrawIn} in.` : seen.sentence}
          numbers={numberRow(seen, pulledNow(weigh.entry, jobDrawIn), isWeighing)}
          tiller={isWeighing ? null : tillerLine(seen)}
          cautions={seen.cautions}
          isChanged={change.isChanged}
          onSeen={change.seen}
          layout={
            isWeighing || step.kind === 'remeasure' || step.kind === 'tiller' ? 'rows' : 'columns'
          }
          side={side}
        >
          {shown}
        </BenchShell>
      )}
    </BenchFrame>
  );
}

function OfficeButton({ office, go }: { office: string; go: (path: string) => void }) {
  useBenchKeys({ onConfirm: () => go(office) });
  return (
    <BigButton kind="main" keyHint="Enter" onClick={() => go(office)}>
      Open the order
    </BigButton>
  );
}

function pulledNow(
  entry: { pulls: { drawIn: number; forceLbf: number }[]; rigZeroLbf: number },
  drawIn: number,
): number | null {
  const found = pulledWeights(entry.pulls, entry.rigZeroLbf).find((w) => w.drawIn === drawIn);
  return found?.forceLbf ?? null;
}
