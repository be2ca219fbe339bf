import { useState } from 'react';
import { contract } from '../../../../shared/contract/index.ts';
import type { Shipment } from '../../../../shared/contract/shipments.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { inputErrors } from '../../../parts/input-schema.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { CarrierSelect } from './carrier-select.tsx';
import { LiveAssessment } from './live-assessment.tsx';
import { emptyParcel, fieldsOf, type ParcelFields } from './parcel-fields.ts';
import { SizeInputs, ValueAndWayInputs } from './parcel-inputs.tsx';

interface ParcelFormProps {
  direction: Shipment['direction'];
  /** The parcel to change; none records a new one. */
  parcel: Shipment | null;
  times?: number;
  onDone: () => void;
}

export function ParcelForm({ direction, parcel, times = 1, onDone }: ParcelFormProps) {
  const { order } = useOrder();
  const [fields, setFields] = useState<ParcelFields>(
    parcel === null ? emptyParcel : fieldsOf(parcel),
  );
  const [isTried, setTried] = useState(false);
  const record = useOrderCommand(api.shipments.record, onDone);
  const edit = useOrderCommand(api.shipments.edit, onDone);
  const command = parcel === null ? record : edit;
  const set = (part: Partial<ParcelFields>) => setFields((now) => ({ ...now, ...part }));
  const newParcel = { orderId: order.card.id, direction, ...fields };
  const own = inputErrors(contract.shipments.record, newParcel);
  const errors = { ...command.details, ...(isTried ? own : {}) };
  const inputs = { fields, set, errors };
  return (
    <FormBox
      title={direction === 'out' ? 'Parcel going out' : 'Parcel that came in'}
      submitLabel={parcel === null ? 'Record the parcel' : 'Save the parcel'}
      command={command}
      times={times}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(own).length > 0) return;
        if (parcel === null) void record.run(newParcel);
        else void edit.run({ id: parcel.id, rowVersion: parcel.rowVersion, ...fields });
      }}
    >
      <CarrierSelect {...inputs} />
      <SizeInputs {...inputs} />
      {direction === 'out' ? <LiveAssessment fields={fields} /> : null}
      <ValueAndWayInputs {...inputs} />
    </FormBox>
  );
}
