import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import type { UndershootRecord } from '../../../../shared/contract/undershoot.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { OfferForm } from './offer-form.tsx';
import { nextStepOf, offerText, shortfallText, stepSentences } from './offer-words.ts';

function OfferItem({ record }: { record: UndershootRecord }) {
  const { isOffice } = useOrder();
  const isStruck = record.struckReason !== null;
  return (
    <li className={classes.item}>
      <p className={`${classes.words} ${isStruck ? classes.struck : ''}`}>{offerText(record)}</p>
      <p className={classes.quiet}>
        {momentText(record.proposedAt)}, {record.proposedBy}, {shortfallText(record)}.
        {isStruck ? ` Struck out: ${record.struckReason}` : ''}
      </p>
      {isStruck || !isOffice ? null : (
        <StrikeOut
          what={`the offer of ${momentText(record.proposedAt)}`}
          record={record}
          fn={api.undershoot.strikeOut}
        />
      )}
    </li>
  );
}

function Decision() {
  const { order, isOffice, open, opened, close } = useOrder();
  const { undershoot, consents, card } = order;
  const [isOffering, setOffering] = useState(false);
  const [offeredId, setOfferedId] = useState<string | null>(null);
  const times = opened.undershoot?.times;
  useEffect(() => {
    if (times !== undefined && isOffice) setOffering(true);
  }, [times, isOffice]);
  const isRead = offeredId !== null && undershoot.offers.some((offer) => offer.id === offeredId);
  // Only with the offer read back: the dialog would open the question about the old one.
  useEffect(() => {
    if (!isRead) return;
    setOfferedId(null);
    if (card.customerId !== null) open('consents', 'undershoot');
  }, [isRead, card.customerId, open]);
  const step = nextStepOf(undershoot, consents, card.customerId === null);
  const ask = () => open('consents', 'undershoot');
  const done = () => {
    setOffering(false);
    close('undershoot');
  };
  return (
    <>
      <p className={classes.quiet} aria-live="polite">
        {stepSentences[step]}
      </p>
      {isOffering ? (
        <OfferForm
          onDone={done}
          onOffered={({ id }) => {
            done();
            setOfferedId(id);
          }}
        />
      ) : null}
      {isOffice && !isOffering ? (
        <div className={classes.buttons} style={{ marginTop: 12 }}>
          {step === 'ask' || step === 'wait' || step === 'ask-again' ? (
            <Button onClick={ask}>
              {step === 'wait' ? 'Record the answer' : 'Ask the customer'}
            </Button>
          ) : null}
          <Button
            variant={step === 'offer' || step === 'offer-again' ? 'filled' : 'default'}
            onClick={() => setOffering(true)}
          >
            {undershoot.isOffered ? 'Offer something else' : 'Say what is offered'}
          </Button>
        </div>
      ) : null}
      {isOffice ? null : <p className={classes.quiet}>The office decides this with the owner.</p>}
    </>
  );
}

/** A bow under its target is a decision with its owner; otherwise there is nothing here. */
export function Undershoot() {
  const { undershoot } = useOrder().order;
  if (undershoot.now === null && undershoot.offers.length === 0) return null;
  return (
    <OrderSection place="undershoot" title="Under the target">
      {undershoot.now === null ? (
        <p className={classes.quiet}>It is not under the target any more.</p>
      ) : (
        <>
          <Mark kind="attention">{shortfallText(undershoot.now)}</Mark>
          <Decision />
        </>
      )}
      {undershoot.offers.length === 0 ? null : (
        <ul className={classes.list} style={{ marginTop: 12 }}>
          {undershoot.offers.map((record) => (
            <OfferItem key={record.id} record={record} />
          ))}
        </ul>
      )}
    </OrderSection>
  );
}
