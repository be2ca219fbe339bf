import { Button } from '@mantine/core';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { inscriptionState } from '../section-states.ts';
import inscriptionClasses from './inscription.module.css';
import { InscriptionForm } from './inscription-form.tsx';

/** The lines to be written on the bow, letter by letter. */
export function Inscription() {
  const { order, isOffice, opened, open } = useOrder();
  const opening = opened.inscription;
  const isWriting = opening !== undefined && isOffice;
  return (
    <OrderSection
      place="inscription"
      title="To be written on the bow"
      state={inscriptionState(order)}
      saysItself
      actions={
        isOffice && opening === undefined ? (
          <Button variant="default" onClick={() => open('inscription')}>
            {order.inscription === '' ? 'Write the lines' : 'Change the lines'}
          </Button>
        ) : null
      }
    >
      {order.inscription === '' && !isWriting ? null : (
        <>
          {order.inscription === '' ? null : (
            <pre className={inscriptionClasses.lines}>{order.inscription}</pre>
          )}
          {isWriting ? <InscriptionForm opening={opening} /> : null}
        </>
      )}
    </OrderSection>
  );
}
