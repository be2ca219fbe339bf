import type { BenchLogLine } from '../../../shared/contract/bench-work.ts';
import { momentText } from '../../parts/days.ts';
import { strikeOut } from './strike-out.ts';
import { type StrikeItem, StrikePanel } from './strike-panel.tsx';
import { useBenchCommand } from './use-bench-command.ts';
import type { Watch } from './weigh-here.tsx';

interface StrikeHereProps {
  orderId: string;
  /** Newest first. */
  log: readonly BenchLogLine[];
  watch: Watch;
  onClose: () => void;
}

/** What was weighed, taken off, looked at and read on this order, newest first, to strike one out. */
export function StrikeHere({ orderId, log, watch, onClose }: StrikeHereProps) {
  const command = useBenchCommand(strikeOut, `${orderId}-strike`, onClose);
  const items = log
    .filter(({ canStrike }) => canStrike)
    .map(({ id, kind, rowVersion, what, at, personName }) => ({
      id,
      kind,
      rowVersion,
      what: /[.!?]$/.test(what) ? what : `${what}.`,
      when: `${momentText(at)}, ${personName}`,
    }));
  const strike = async ({ id }: StrikeItem, reason: string) => {
    const item = items.find((one) => one.id === id);
    if (item === undefined) return;
    const { kind, rowVersion } = item;
    watch.expect();
    if ((await command.run({ kind, id, rowVersion, reason })) === undefined) watch.failed();
  };
  return (
    <StrikePanel
      items={items}
      command={command}
      onStrike={(item, reason) => void strike(item, reason)}
      onClose={onClose}
    />
  );
}
