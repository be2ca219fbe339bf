import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import { type ConsentKind, consentKind } from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { consentsState } from '../section-states.ts';
import { AnswerDialog } from './answer-dialog.tsx';
import { AskDialog } from './ask-dialog.tsx';
import { ConsentItem } from './consent-item.tsx';

type Dialog = { is: 'ask'; kind: ConsentKind } | { is: 'answer'; consent: Consent };

/** The dialog that a missing consent calls for: the answer to what was asked, else the question. */
function dialogFor(kind: ConsentKind, consents: readonly Consent[]): Dialog {
  const newest = consents.find((consent) => consent.kind === kind);
  return newest?.state === 'waiting' ? { is: 'answer', consent: newest } : { is: 'ask', kind };
}

/** What the customer was asked, in which words, and what was answered. */
export function Consents() {
  const { order, isOffice, opened, close } = useOrder();
  const [dialog, setDialog] = useState<Dialog | null>(null);
  const asked = consentKind.safeParse(opened.consents?.opens);
  const times = opened.consents?.times;
  const mayAsk = isOffice && order.card.customerId !== null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking opens the dialog once.
  useEffect(() => {
    if (asked.success && mayAsk) setDialog(dialogFor(asked.data, order.consents));
  }, [times, mayAsk]);
  const done = () => {
    setDialog(null);
    close('consents');
  };
  const first = order.services.includes('re-mark')
    ? 'price-and-scope'
    : 'alteration-acknowledgement';
  return (
    <OrderSection
      place="consents"
      title="Consents"
      state={consentsState(order)}
      isBusy={dialog !== null}
      actions={
        mayAsk ? (
          <Button variant="default" onClick={() => setDialog({ is: 'ask', kind: first })}>
            Ask the customer
          </Button>
        ) : null
      }
    >
      <p className={classes.quiet}>
        {order.card.customerId === null
          ? "This is the shop's own bow, or its owner is not known yet: there is nobody to ask."
          : 'No reply never means yes: what has no answer stays unanswered.'}
        {isOffice ? '' : ' The office asks and writes down the answers.'}
      </p>
      <ul className={classes.list}>
        {order.consents.map((consent) => (
          <ConsentItem
            key={consent.id}
            consent={consent}
            onAnswer={isOffice ? () => setDialog({ is: 'answer', consent }) : null}
          />
        ))}
      </ul>
      {dialog?.is === 'ask' ? <AskDialog first={dialog.kind} onDone={done} /> : null}
      {dialog?.is === 'answer' ? <AnswerDialog consent={dialog.consent} onDone={done} /> : null}
    </OrderSection>
  );
}
