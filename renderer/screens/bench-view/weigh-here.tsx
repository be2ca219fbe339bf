import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { ContractRequests } from '../../../shared/contract/types.ts';
import { api, orpc } from '../../api/client.ts';
import { BenchCommandError } from './bench-command-error.tsx';
import { useKeptEntry } from './kept-entry.ts';
import { RigStep } from './rig-step.tsx';
import { useBenchCommand } from './use-bench-command.ts';
import { type WeighEntry, weighEntry } from './weigh-entry.ts';
import { WeighStep } from './weigh-step.tsx';

type Weighing = ContractRequests['readings']['add'];

/** What a weighing is prefilled with: the same bow, rig and string as the last one. */
export interface WeighPrefill
  extends Omit<Weighing, 'commandId' | 'orderId' | 'pulls' | 'scaleId'> {
  scaleId: string | null;
  draws: readonly number[];
  strings: readonly string[];
}

export interface Watch {
  /** This screen is about to write. */
  expect: () => void;
  failed: () => void;
}

interface WeighHereProps {
  orderId: string;
  jobDrawIn: number;
  prefill: WeighPrefill;
  watch: Watch;
  entry: WeighEntry;
  onChange: (entry: WeighEntry) => void;
  onClear: () => void;
  onSaved: () => void;
}

/** The entry of a weighing, kept in this browser until it is saved. */
export function useWeighEntry(orderId: string, prefill: WeighPrefill | null, jobDrawIn: number) {
  return useKeptEntry<WeighEntry>(`${orderId}-weigh`, weighEntry, {
    drawIn: jobDrawIn,
    pulls: [],
    rigZeroLbf: prefill?.rigZeroLbf ?? 0,
    braceIn: prefill?.braceIn ?? 7,
    scaleId: prefill?.scaleId ?? null,
    stringNote: prefill?.stringNote ?? '',
    isReading: false,
  });
}

/** Weighs the bow with `readings.add`: what the rig reads, under the conditions of the last time. */
export function WeighHere(props: WeighHereProps) {
  const { orderId, jobDrawIn, prefill, watch, entry, onChange, onClear, onSaved } = props;
  const [isRig, setRig] = useState(false);
  const scales = useQuery(orpc.scales.list.queryOptions());
  const scale = scales.data?.find(({ id }) => id === entry.scaleId) ?? null;
  const command = useBenchCommand(api.readings.add, `${orderId}-weigh`, () => {
    onClear();
    onSaved();
  });
  const save = async () => {
    const { scaleId, pulls, rigZeroLbf, braceIn, stringNote } = entry;
    if (scaleId === null || command.busy) return;
    const { draws: _, strings: __, ...fields } = prefill;
    watch.expect();
    const given = { ...fields, orderId, scaleId, rigZeroLbf, braceIn, stringNote, pulls };
    if ((await command.run(given)) === undefined) watch.failed();
  };
  const notice = <BenchCommandError command={command} />;
  if (isRig) {
    return (
      <RigStep
        entry={entry}
        onChange={onChange}
        strings={prefill.strings}
        hasScale={scale?.usable === true}
        notice={notice}
        onClose={() => setRig(false)}
      />
    );
  }
  return (
    <WeighStep
      entry={entry}
      onChange={onChange}
      jobDrawIn={jobDrawIn}
      draws={prefill.draws}
      scaleName={scale?.usable === true ? scale.name : null}
      busy={command.busy}
      notice={notice}
      onSave={() => void save()}
      onRig={() => setRig(true)}
    />
  );
}
