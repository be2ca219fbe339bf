import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OfferForm } from './offer-form.tsx';
import { nextStepOf, type OfferStep, stepSentences } from './offer-words.ts';

/** Opens the question to the customer once the offer is read back: earlier it would be about the old one. */
function useLeadToConsent(): (offerId: string) => void {
  const { order, open } = useOrder();
  const [offeredId, setOfferedId] = useState<string | null>(null);
  const hasCustomer = order.card.customerId !== null;
  const isRead =
    offeredId !== null && order.undershoot.offers.some((offer) => offer.id === offeredId);
  useEffect(() => {
    if (!isRead) return;
    setOfferedId(null);
    if (hasCustomer) open('consents', 'undershoot');
  }, [isRead, hasCustomer, open]);
  return setOfferedId;
}

interface DecisionButtonsProps {
  step: OfferStep;
  onOffer: () => void;
}

function DecisionButtons({ step, onOffer }: DecisionButtonsProps) {
  const { order, open } = useOrder();
  const isAsking = step === 'ask' || step === 'wait' || step === 'ask-again';
  return (
    <div className={classes.buttons} style={{ marginTop: 12 }}>
      {isAsking ? (
        <Button onClick={() => open('consents', 'undershoot')}>
          {step === 'wait' ? 'Record the answer' : 'Ask the customer'}
        </Button>
      ) : null}
      <Button
        variant={step === 'offer' || step === 'offer-again' ? 'filled' : 'default'}
        onClick={onOffer}
      >
        {order.undershoot.isOffered ? 'Offer something else' : 'Say what is offered'}
      </Button>
    </div>
  );
}

/** What the shop offers for a bow under its target, and what the customer says to it. */
export function Decision() {
  const { order, isOffice, opened, close } = useOrder();
  const [isOffering, setOffering] = useState(false);
  const leadToConsent = useLeadToConsent();
  const times = opened.undershoot?.times;
  useEffect(() => {
    if (times !== undefined && isOffice) setOffering(true);
  }, [times, isOffice]);
  const step = nextStepOf(order.undershoot, order.consents, order.card.customerId === null);
  const done = () => {
    setOffering(false);
    close('undershoot');
  };
  return (
    <>
      <p className={classes.quiet} aria-live="polite">
        {stepSentences[step]}
        {isOffice ? '' : ' The office writes it down.'}
      </p>
      {isOffering ? (
        <OfferForm
          onDone={done}
          onOffered={({ id }) => {
            done();
            leadToConsent(id);
          }}
        />
      ) : null}
      {isOffice && !isOffering ? (
        <DecisionButtons step={step} onOffer={() => setOffering(true)} />
      ) : null}
    </>
  );
}
