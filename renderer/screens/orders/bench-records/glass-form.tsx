import { Checkbox, TextInput } from '@mantine/core';
import { useState } from 'react';
import { type GlassSign, glassSignLabels, glassSigns } from '../../../../shared/bench.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

const nothingSeen: Record<GlassSign, boolean> = {
  showThrough: false,
  strands: false,
  runOut: false,
  exposedCore: false,
};

/** The four signs, ticked where they are seen. */
export function GlassForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const [seen, setSeen] = useState(nothingSeen);
  const [note, setNote] = useState('');
  const command = useOrderCommand(api.bench.checkGlass, onClose);
  const isSeen = glassSigns.some((sign) => seen[sign]);
  return (
    <FormBox
      title="Check the glass"
      submitLabel={isSeen ? 'Record what is seen' : 'Record: nothing seen'}
      command={command}
      onCancel={onClose}
      onSubmit={() => void command.run({ orderId: order.card.id, ...seen, note })}
    >
      <p style={{ margin: '0 0 8px' }}>
        Unstring the bow first. Tick only what is seen; any of them stops the next bite.
      </p>
      {glassSigns.map((sign) => (
        <Checkbox
          key={sign}
          label={glassSignLabels[sign]}
          checked={seen[sign]}
          styles={{ root: { minHeight: 44, display: 'flex', alignItems: 'center' } }}
          onChange={(event) => {
            const { checked } = event.currentTarget;
            setSeen((now) => ({ ...now, [sign]: checked }));
          }}
        />
      ))}
      <TextInput
        label="Where, and anything else"
        value={note}
        maxLength={1000}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}
