import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { api } from '../../api/client.ts';
import { momentText } from '../../parts/days.ts';
import { type StrikeItem, StrikePanel } from './strike-panel.tsx';
import { useBenchCommand } from './use-bench-command.ts';
import { pullText } from './weigh-entry.ts';
import type { Watch } from './weigh-here.tsx';

interface StrikeHereProps {
  order: OrderDetail;
  watch: Watch;
  onClose: () => void;
}

/** Weighings of this order that count, newest first, to strike one out. */
export function StrikeHere({ order, watch, onClose }: StrikeHereProps) {
  const command = useBenchCommand(api.readings.strikeOut, `${order.card.id}-strike`, onClose);
  const items: StrikeItem[] = order.readings
    .filter(({ struckReason }) => struckReason === null)
    .toReversed()
    .map(({ id, rowVersion, weights, weighedAt, personName }) => ({
      id,
      rowVersion,
      what: `Weighed ${weights.map(pullText).join(', ') || 'nothing that counts'}.`,
      when: `${momentText(weighedAt)}, ${personName}`,
    }));
  const strike = async ({ id, rowVersion }: StrikeItem, reason: string) => {
    watch.expect();
    if ((await command.run({ id, rowVersion, reason })) === undefined) watch.failed();
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
