import { type ReactNode, useState } from 'react';
import { weighingCautions } from '../../../shared/bench.ts';
import type { BenchView as BenchRecords } from '../../../shared/contract/bench-work.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Scale } from '../../../shared/contract/scales.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { BenchCommandError } from './bench-command-error.tsx';
import { BenchFrame } from './bench-frame.tsx';
import { BenchShell } from './bench-shell.tsx';
import classes from './bench-view.module.css';
import { ChangedNote } from './changed-note.tsx';
import { FullStep, isFull } from './full-step.tsx';
import { pulledWeights } from './pulls.ts';
import type { Seen } from './seen.ts';
import { numberRow, tillerLine } from './seen-text.ts';
import { SideButtons } from './side-buttons.tsx';
import { StepWork } from './step-work.tsx';
import { StrikeHere } from './strike-here.tsx';
import { UndoPanel } from './undo-panel.tsx';
import type { useAdviceChange } from './use-advice-change.ts';
import { useBenchListener } from './use-bench-keys.ts';
import { useOpenBow } from './use-open-bow.ts';
import { useStepWrites } from './use-step-writes.ts';
import { useWeighEntry, WeighHere } from './weigh-here.tsx';
import { weighPrefill } from './weigh-prefill.ts';

export type Mode = 'step' | 'weigh' | 'undo' | 'strike';

interface BenchViewProps {
  view: BenchRecords;
  seen: Seen;
  order: OrderDetail;
  scales: readonly Scale[];
  change: ReturnType<typeof useAdviceChange>;
}

/** The glove view of one bow: what to do now, and always the same ways to weigh and to take back. */
export function BenchView({ view, seen, order, scales, change }: BenchViewProps) {
  const [mode, setMode] = useState<Mode>('step');
  const { open, trouble } = useOpenBow();
  // The work order of this very bow brings back what its hands do next.
  useBenchListener((number) => (number === seen.number ? setMode('step') : void open(number)));
  const writes = useStepWrites(view, seen, change);
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
    <SideButtons
      mode={mode}
      onMode={setMode}
      canWeigh={!isBarred && !isWeighing}
      onNoWeighing={
        isWeighing && step.kind !== 'weigh'
          ? () => {
              weigh.clear();
              back();
            }
          : null
      }
    />
  );
  const isEntry = step.kind === 'remeasure' || step.kind === 'tiller';
  const shell = (work: ReactNode) => (
    <BenchShell
      sentence={isWeighing ? `Weigh at ${jobDrawIn} in.` : seen.sentence}
      numbers={numberRow(seen, pulledNow(weigh.entry, jobDrawIn), isWeighing)}
      tiller={isWeighing ? null : tillerLine(seen)}
      told={isWeighing ? null : seen.told}
      cautions={isWeighing ? weighingCautions : seen.cautions}
      layout={isWeighing || isEntry ? 'rows' : 'columns'}
      side={side}
    >
      {work}
    </BenchShell>
  );
  const shown = () => {
    if (mode === 'undo') {
      const strike = () => setMode('strike');
      return shell(
        <UndoPanel orderId={seen.orderId} onClose={back} onStrikeOut={strike} watch={change} />,
      );
    }
    if (mode === 'strike') {
      return shell(
        <StrikeHere orderId={seen.orderId} log={view.log} watch={change} onClose={back} />,
      );
    }
    if (isWeighing) {
      return shell(
        <WeighHere
          orderId={seen.orderId}
          jobDrawIn={jobDrawIn}
          prefill={prefill}
          watch={change}
          entry={weigh.entry}
          onChange={weigh.change}
          onClear={weigh.clear}
          onSaved={back}
        />,
      );
    }
    if (isFull(seen)) return <FullStep seen={seen} writes={writes} side={side} shell={shell} />;
    const braceIn = order.readings.length === 0 ? null : prefill.braceIn;
    const onWeigh = () => setMode('weigh');
    return shell(<StepWork seen={seen} writes={writes} braceIn={braceIn} onWeigh={onWeigh} />);
  };
  return (
    <BenchFrame
      title={`${seen.number} ${seen.customer}`}
      about={seen.bow}
      back={{ href: '/bench', label: 'Bows' }}
    >
      {trouble === null ? null : <ErrorNote error={trouble} />}
      <div className={classes.notes}>
        {writes.failed === null ? null : <BenchCommandError command={writes.failed} />}
      </div>
      {change.isChanged ? <ChangedNote onSeen={change.seen} /> : null}
      {shown()}
    </BenchFrame>
  );
}

function pulledNow(
  entry: { pulls: { drawIn: number; forceLbf: number }[]; rigZeroLbf: number },
  drawIn: number,
): number | null {
  const found = pulledWeights(entry.pulls, entry.rigZeroLbf).find((w) => w.drawIn === drawIn);
  return found?.forceLbf ?? null;
}
