import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { OrderFinishNow } from '../../../../shared/contract/finish.ts';
import { orpc } from '../../../api/client.ts';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { Advice } from '../../finish-room/advice.tsx';
import { AirForm } from '../../finish-room/air-form.tsx';
import { ChooseFinish } from '../../finish-room/choose-finish.tsx';
import { SandingForm } from '../../finish-room/sanding-form.tsx';
import { useOrder } from '../order-screen.tsx';
import type { FinishForm } from './finish-openings.ts';

interface FinishFormsProps {
  form: FinishForm | null;
  times: number;
  finish: OrderFinishNow;
  onClose: () => void;
}

function Choosing({ finish, times, onClose }: Omit<FinishFormsProps, 'form'>) {
  const { order } = useOrder();
  const systems = useQuery(orpc.finish.systems.queryOptions({ input: { includeInactive: false } }));
  if (systems.error !== null) {
    return <ErrorNote error={systems.error} onAgain={() => void systems.refetch()} />;
  }
  if (systems.data === undefined) return <BusyNote />;
  return (
    <ChooseFinish
      orderId={order.card.id}
      number={order.card.number}
      systems={systems.data}
      chosen={finish.chosen}
      times={times}
      onClose={onClose}
    />
  );
}

function Sanding({ finish, times, onClose }: Omit<FinishFormsProps, 'form'>) {
  const { order } = useOrder();
  const grits = useQuery(orpc.stores.grits.queryOptions());
  const [advice, setAdvice] = useState<readonly string[] | null>(null);
  if (advice !== null) return <Advice advice={advice} />;
  if (grits.error !== null) {
    return <ErrorNote error={grits.error} onAgain={() => void grits.refetch()} />;
  }
  if (grits.data === undefined) return <BusyNote />;
  return (
    <SandingForm
      bows={[]}
      orderId={order.card.id}
      lastGrits={() => finish.lastGrits}
      grits={grits.data}
      times={times}
      onDone={(said) => (said.length === 0 ? onClose() : setAdvice(said))}
      onClose={onClose}
    />
  );
}

/** The form that was asked for, of those that are about this order alone. */
export function FinishForms({ form, ...props }: FinishFormsProps) {
  const { finish, onClose } = props;
  if (form === 'finish-system') return <Choosing {...props} />;
  if (form === 'last-grit') return <Sanding {...props} />;
  if (form === 'air') {
    const { chosen } = finish;
    const of = chosen === null ? null : { id: chosen.finishSystemId, name: chosen.sheet.name };
    return <AirForm finish={of} onClose={onClose} />;
  }
  return null;
}
