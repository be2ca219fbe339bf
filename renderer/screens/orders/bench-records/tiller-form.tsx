import { Select, TextInput } from '@mantine/core';
import { useState } from 'react';
import {
  type StringTrack,
  stringTrack,
  stringTrackLabels,
  stringTracks,
} from '../../../../shared/bench.ts';
import { api } from '../../../api/client.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';

const tracks = stringTracks.map((value) => ({ value, label: stringTrackLabels[value] }));

interface TrackSelectProps {
  limb: string;
  value: StringTrack;
  onChange: (value: StringTrack) => void;
}

function TrackSelect({ limb, value, onChange }: TrackSelectProps) {
  return (
    <Select
      label={`String over the ${limb} limb`}
      data={tracks}
      allowDeselect={false}
      value={value}
      onChange={(next) => onChange(stringTrack.parse(next ?? value))}
    />
  );
}

export function TillerForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const [tillerIn, setTiller] = useState<number | null>(null);
  const [braceIn, setBrace] = useState<number | null>(null);
  const [upperTrack, setUpper] = useState<StringTrack>('centre');
  const [lowerTrack, setLower] = useState<StringTrack>('centre');
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.bench.readTiller, onClose);
  const isMissing = tillerIn === null || Number.isNaN(tillerIn);
  return (
    <FormBox
      title="Read the tiller"
      submitLabel="Record the tiller"
      command={command}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (isMissing) return;
        const orderId = order.card.id;
        void command.run({ orderId, tillerIn, upperTrack, lowerTrack, braceIn, note });
      }}
    >
      <FieldGrid>
        <NumberField
          label="Tiller, in"
          unit="in"
          required
          description="Upper minus lower string-to-limb distance at the fades; -1/8 where the lower is larger."
          value={tillerIn}
          error={
            command.details.tillerIn ??
            (isTried && isMissing ? 'Measure both fades and give the difference.' : undefined)
          }
          onChange={setTiller}
        />
        <NumberField
          label="Brace height, in"
          unit="in"
          value={braceIn}
          error={command.details.braceIn}
          onChange={setBrace}
        />
        <TrackSelect limb="upper" value={upperTrack} onChange={setUpper} />
        <TrackSelect limb="lower" value={lowerTrack} onChange={setLower} />
      </FieldGrid>
      <TextInput
        label="Note"
        value={note}
        maxLength={1000}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}
