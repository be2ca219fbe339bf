import { useState } from 'react';
import type { BenchView } from '../../../shared/contract/bench-work.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { api } from '../../api/client.ts';
import type { FailedCommand } from './bench-command-error.tsx';
import type { GlassAnswers } from './glass-signs.ts';
import { type RemeasureEntry, remeasured } from './remeasure-entry.ts';
import type { Seen } from './seen.ts';
import type { TillerEntry } from './tiller-entry.ts';
import { useBenchCommand } from './use-bench-command.ts';
import type { Watch } from './weigh-here.tsx';

/** What the steps write. Each answers whether it was carried out; the entry is kept until then. */
export interface StepWrites {
  busy: boolean;
  failed: FailedCommand | null;
  /** What a gate wanted when it last said no. */
  refused: readonly MissingItem[];
  bite: (
    other: { upper: number; lower: number } | null,
    because: string,
    tool: string,
  ) => Promise<boolean>;
  sanding: (because: string, tool: string) => Promise<boolean>;
  remeasure: (entry: RemeasureEntry) => Promise<boolean>;
  glass: (answers: GlassAnswers) => Promise<boolean>;
  tiller: (entry: TillerEntry, braceIn: number | null) => Promise<boolean>;
  surprise: (answers: Record<string, boolean>) => Promise<boolean>;
}

const nothing = () => {};
const passing = (because: string) =>
  because.trim() === '' ? {} : { override: { reason: because.trim() } };

/** What a gate wants before it lets the step pass; nothing where it did, or where none stands. */
function missingIn(result: object): readonly MissingItem[] | null {
  const { outcome, missing } = result as { outcome?: string; missing?: readonly MissingItem[] };
  return outcome === 'refused' ? (missing ?? []) : null;
}

function useCommands(orderId: string) {
  const named = (name: string) => `${orderId}-${name}`;
  return {
    takeBite: useBenchCommand(api.bench.takeBite, named('bite'), nothing),
    recordSanding: useBenchCommand(api.bench.recordSanding, named('sanding'), nothing),
    remeasure: useBenchCommand(api.bench.remeasure, named('remeasure'), nothing),
    checkGlass: useBenchCommand(api.bench.checkGlass, named('glass'), nothing),
    readTiller: useBenchCommand(api.bench.readTiller, named('tiller'), nothing),
    answerSurprise: useBenchCommand(api.bench.answerSurprise, named('surprise'), nothing),
  };
}

/** The commands of the steps, under ids that outlive a lost connection and a reload. */
export function useStepWrites(view: BenchView, seen: Seen, watch: Watch): StepWrites {
  const { orderId, advice } = view;
  const { takeBite, recordSanding, remeasure, checkGlass, readTiller, answerSurprise } =
    useCommands(orderId);
  const all = [takeBite, recordSanding, remeasure, checkGlass, readTiller, answerSurprise];
  const [refused, setRefused] = useState<readonly MissingItem[]>([]);
  const done = async (write: () => Promise<object | undefined>): Promise<boolean> => {
    watch.expect();
    const result = await write();
    const missing = result === undefined ? null : missingIn(result);
    setRefused(missing ?? []);
    const isDone = result !== undefined && missing === null;
    if (!isDone) watch.failed();
    return isDone;
  };
  const { step } = seen;
  return {
    busy: all.some(({ busy }) => busy),
    failed: all.find(({ error }) => error !== null) ?? null,
    refused,
    bite: (other, because, tool) =>
      done(() => takeBite.run({ orderId, advice, other, tool, note: '', ...passing(because) })),
    sanding: (because, tool) =>
      done(() => recordSanding.run({ orderId, advice, tool, note: '', ...passing(because) })),
    remeasure: async (entry) => {
      if (step.kind !== 'remeasure') return false;
      return done(() => remeasure.run(remeasured(step, entry)));
    },
    glass: ({ showThrough, strands, runOut, exposedCore }) =>
      done(() =>
        checkGlass.run({
          orderId,
          showThrough: showThrough === true,
          strands: strands === true,
          runOut: runOut === true,
          exposedCore: exposedCore === true,
          note: '',
        }),
      ),
    tiller: async ({ tillerIn, upperTrack, lowerTrack }, braceIn) => {
      if (upperTrack === null || lowerTrack === null) return false;
      const input = { orderId, tillerIn, upperTrack, lowerTrack, braceIn, note: '' };
      return done(() => readTiller.run(input));
    },
    surprise: async (given) => {
      if (step.kind !== 'questions') return false;
      const { readingId, rowVersion, questions } = step;
      const answers = questions.map(({ about }) => ({ about, isRight: given[about] === true }));
      return done(() => answerSurprise.run({ readingId, rowVersion, answers, note: '' }));
    },
  };
}
