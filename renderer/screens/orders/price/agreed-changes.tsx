import { Button } from '@mantine/core';
import { useState } from 'react';
import type { AgreedChange } from '../../../../shared/contract/prices.ts';
import { dollarText } from '../../../../shared/money.ts';
import { dayOf, fullDay } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { useOrder } from '../order-screen.tsx';
import { AddLine } from './add-lines.tsx';
import { draftOfChange } from './line-fields.ts';

const ways: Record<string, string> = {
  phone: 'by phone',
  email: 'by e-mail',
  'in-person': 'in person',
};

function changeText({ cents, channel, answeredBy, agreedAt }: AgreedChange): string {
  const sign = cents > 0 ? '+' : '';
  const how = ways[channel] ?? channel;
  return `Agreed ${how}: ${sign}${dollarText(cents)}, not yet in the lines (${answeredBy}, ${fullDay(dayOf(agreedAt))}).`;
}

function Change({ change }: { change: AgreedChange }) {
  const { isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  return (
    <div style={{ marginTop: 12 }}>
      <Mark kind="attention">{changeText(change)}</Mark>
      {isOpen ? (
        <AddLine
          title="Add what was agreed"
          initial={draftOfChange(change)}
          answerId={change.answerId}
          onClose={() => setOpen(false)}
        />
      ) : null}
      {isOffice && !isOpen ? (
        <Button variant="default" mt={8} onClick={() => setOpen(true)}>
          Add it as a line
        </Button>
      ) : null}
    </div>
  );
}

/** Changes of cost a customer agreed to that nobody has written into the price. */
export function AgreedChanges() {
  const { agreedChanges } = useOrder().order.price;
  return agreedChanges.map((change) => <Change key={change.answerId} change={change} />);
}
