import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Payment } from '../../../../shared/contract/prices.ts';
import { dollarText, paymentKindLabels, paymentMethodLabels } from '../../../../shared/money.ts';
import { api } from '../../../api/client.ts';
import { fullDay } from '../../../parts/days.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { PaymentForm } from './payment-form.tsx';

/** One payment; what was struck out stays readable. */
function PaymentItem({ payment }: { payment: Payment }) {
  const { isOffice } = useOrder();
  const isStruck = payment.struckReason !== null;
  const amount = dollarText(payment.cents);
  const what = `${paymentKindLabels[payment.kind]} ${amount}, ${paymentMethodLabels[payment.method].toLowerCase()}`;
  const more = [payment.reference, payment.note].filter((each) => each !== '').join(', ');
  return (
    <li className={classes.item}>
      <p className={`${classes.words} ${isStruck ? classes.struck : ''}`}>{what}</p>
      <p className={classes.quiet} style={{ overflowWrap: 'anywhere' }}>
        {fullDay(payment.receivedOn)}, {payment.recordedBy}
        {more === '' ? '' : `: ${more}`}
        {isStruck ? `. Struck out: ${payment.struckReason}` : ''}
      </p>
      {isStruck || !isOffice ? null : (
        <StrikeOut what={what} record={payment} fn={api.prices.strikeOutPayment} />
      )}
    </li>
  );
}

/** What was paid, and the way to write down more. */
export function Payments() {
  const { order, isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  const { payments } = order.price;
  return (
    <>
      {payments.length === 0 ? null : (
        <ul className={classes.list} style={{ marginTop: 12 }} aria-label="Payments">
          {payments.map((payment) => (
            <PaymentItem key={payment.id} payment={payment} />
          ))}
        </ul>
      )}
      {isOpen ? <PaymentForm onClose={() => setOpen(false)} /> : null}
      {isOffice && !isOpen ? (
        <Button variant="default" mt={12} onClick={() => setOpen(true)}>
          Record a payment
        </Button>
      ) : null}
    </>
  );
}
