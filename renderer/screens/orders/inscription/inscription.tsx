import { Button } from '@mantine/core';
import { useState } from 'react';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { inscriptionState } from '../section-states.ts';
import { InscriptionForm } from './inscription-form.tsx';
import { LayoutFacts } from './layout-facts.tsx';
import { LayoutForm } from './layout-form.tsx';
import { LetteringSteps } from './lettering-steps.tsx';
import { TrueSize } from './true-size.tsx';

/** The lines to be written on the bow, letter by letter, where they stand and how far it is. */
export function Inscription() {
  const { order, isOffice, opened, open } = useOrder();
  const [isLayingOut, setLayingOut] = useState(false);
  const opening = opened.inscription;
  const isWriting = opening !== undefined && isOffice;
  const hasLines = order.inscription.trim() !== '';
  const layout = order.inscriptionLayout;
  return (
    <OrderSection
      place="inscription"
      title="To be written on the bow"
      state={inscriptionState(order)}
      saysItself
      isBusy={isLayingOut}
      actions={
        <>
          {isOffice && opening === undefined ? (
            <Button variant="default" onClick={() => open('inscription')}>
              {order.inscription === '' ? 'Write the lines' : 'Change the lines'}
            </Button>
          ) : null}
          {isLayingOut ? null : (
            <Button variant="default" onClick={() => setLayingOut(true)}>
              {layout === null ? 'Say where and how' : 'Change where and how'}
            </Button>
          )}
        </>
      }
    >
      {!hasLines && !isWriting && !isLayingOut && layout === null ? null : (
        <>
          {hasLines ? <TrueSize lines={order.inscription} /> : null}
          {isWriting ? <InscriptionForm opening={opening} /> : null}
          {isLayingOut ? (
            <LayoutForm onClose={() => setLayingOut(false)} />
          ) : layout === null ? null : (
            <LayoutFacts layout={layout} />
          )}
          {hasLines ? <PaperWays /> : null}
          {hasLines ? <LetteringSteps /> : null}
        </>
      )}
    </OrderSection>
  );
}

/** The proof to show before, the guide to letter from after the approval. */
function PaperWays() {
  const { open } = useOrder();
  return (
    <div style={{ display: 'flex', flexWrap: 'wrap', gap: 8, marginBottom: 12 }}>
      <Button variant="default" onClick={() => open('papers', 'inscription-proof')}>
        Print the proof
      </Button>
      <Button variant="default" onClick={() => open('papers', 'bow-label')}>
        Print the lettering guide or label
      </Button>
    </div>
  );
}
