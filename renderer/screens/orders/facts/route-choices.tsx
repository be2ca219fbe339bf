import { Checkbox, Radio } from '@mantine/core';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

/** Which way round the work goes, and how the bow goes home. */
export function RouteChoices() {
  const { order, role, isOffice } = useOrder();
  const { id, rowVersion, route, goingHome } = order.card;
  const strip = useOrderCommand(api.orders.setStripFirst);
  const handover = useOrderCommand(api.orders.setHandover);
  const hasBoth = route.includes('weight-work') && route.includes('strip-sand');
  const isStripFirst = route.indexOf('strip-sand') < route.indexOf('weight-work');
  return (
    <div style={{ display: 'grid', gap: 16, marginTop: 16 }}>
      <Radio.Group
        size="md"
        label="Goes home"
        value={route.includes('collected') ? 'collected' : 'shipped'}
        onChange={(value) =>
          void handover.run({
            id,
            rowVersion,
            handover: value === 'collected' ? 'collected' : 'shipped',
          })
        }
      >
        <div style={{ display: 'flex', flexWrap: 'wrap', gap: '8px 24px', paddingTop: 8 }}>
          <Radio value="shipped" label="by parcel" disabled={!isOffice || handover.busy} />
          <Radio value="collected" label="collected" disabled={!isOffice || handover.busy} />
        </div>
      </Radio.Group>
      <CommandError command={handover} />
      {hasBoth && goingHome === null ? (
        <Checkbox
          label="Strip & sand before the weight work"
          description={
            role === 'owner'
              ? 'Thinning needs bare glass.'
              : 'Thinning needs bare glass. The owner decides.'
          }
          checked={isStripFirst}
          disabled={role !== 'owner' || strip.busy}
          onChange={(event) =>
            void strip.run({ id, rowVersion, stripFirst: event.currentTarget.checked })
          }
        />
      ) : null}
      <CommandError command={strip} />
    </div>
  );
}
