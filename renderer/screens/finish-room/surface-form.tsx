import { useState } from 'react';
import type { RoomBow } from '../../../shared/contract/finish.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { Tick, TickGroup } from './tick.tsx';
import { instantFrom } from './when.ts';
import { WhenField } from './when-field.tsx';

interface SurfaceFormProps {
  bows: readonly RoomBow[];
  onClose: () => void;
}

/** Surface temperature of bows between coats: the highest held for an hour chooses the window. */
export function SurfaceForm({ bows, onClose }: SurfaceFormProps) {
  const [orderIds, setOrderIds] = useState<readonly string[]>(() =>
    bows.map(({ orderId }) => orderId),
  );
  const [surfaceF, setSurface] = useState<number | null>(null);
  const [at, setAt] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useCommand(api.finish.readSurface, { onDone: onClose });
  const input = {
    orderIds: [...orderIds],
    surfaceF: surfaceF ?? Number.NaN,
    at: instantFrom(at),
  };
  const wrong = inputErrors(contract.finish.readSurface, input);
  const errors = isTried ? { ...command.details, ...wrong } : {};
  return (
    <FormBox
      title="Read the surface"
      submitLabel="Record the surface"
      command={command}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) void command.run(input);
      }}
    >
      <NumberField
        label="Surface, F"
        description="Each hour between coats; each half hour above 100 F."
        unit="F"
        required
        value={surfaceF}
        error={errors.surfaceF}
        onChange={setSurface}
      />
      <TickGroup label="Of these bows" error={errors.orderIds}>
        {bows.map(({ orderId, number, customerName }) => (
          <Tick
            key={orderId}
            isOn={orderIds.includes(orderId)}
            onChange={(isOn) =>
              setOrderIds(
                isOn ? [...orderIds, orderId] : orderIds.filter((other) => other !== orderId),
              )
            }
          >
            {number} {customerName}
          </Tick>
        ))}
      </TickGroup>
      <WhenField value={at} error={errors.at} onChange={setAt} />
    </FormBox>
  );
}
