import { Button } from '@mantine/core';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import inscriptionClasses from './inscription.module.css';
import { InscriptionForm } from './inscription-form.tsx';

/** The lines to be written on the bow, letter by letter. */
export function Inscription() {
  const { order, isOffice, opened, open } = useOrder();
  const opening = opened.inscription;
  const isMarked = order.services.includes('re-mark');
  return (
    <OrderSection
      place="inscription"
      title="To be written on the bow"
      actions={
        isOffice && opening === undefined ? (
          <Button variant="default" onClick={() => open('inscription')}>
            {order.inscription === '' ? 'Write the lines' : 'Change the lines'}
          </Button>
        ) : null
      }
    >
      {order.inscription === '' ? (
        <p className={classes.quiet}>
          {isMarked ? 'No lines given yet.' : 'No lines given; this order has no re-marking.'}
          {isOffice ? '' : ' The office writes them.'}
        </p>
      ) : (
        <pre className={inscriptionClasses.lines}>{order.inscription}</pre>
      )}
      {opening !== undefined && isOffice ? <InscriptionForm opening={opening} /> : null}
    </OrderSection>
  );
}
