import { Button } from '@mantine/core';
import { useState } from 'react';
import { type Message, messageChannelLabels } from '../../../../shared/contract/messages.ts';
import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import type { Stage } from '../../../../shared/stages.ts';
import { type MessageStep, messageStepLabels } from '../../../../shared/wordings.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { StrikeOutButton } from '../../../parts/strike-out.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { MessageDialog } from './message-form.tsx';

const usual: Partial<Record<Stage, MessageStep>> = {
  requested: 'request-taken',
  'in-mail': 'packing-advice',
  arrived: 'arrived',
  agreed: 'approval-asked',
  'weight-work': 'weight-done',
  'strip-sand': 'weight-done',
  finish: 'weight-done',
  cure: 'balance-due',
  'final-check': 'balance-due',
  packed: 'balance-due',
  shipped: 'shipped',
};

/** The message most likely written now. */
export function usualStep({ card, undershoot }: OrderDetail): MessageStep {
  if (card.goingHome !== null) return 'going-home';
  if (card.waitingConsents > 0) return 'approval-asked';
  if (undershoot.now !== null) return 'undershoot';
  return usual[card.stage] ?? 'request-taken';
}

const handedWords: Record<Message['handed'], string> = {
  copied: 'copied',
  'mail-program': 'opened in the mail program',
  file: 'saved as a mail file',
  noted: 'written down',
};

export function messagesState(messages: readonly Message[]): string {
  const [last] = messages.filter(({ struckReason }) => struckReason === null);
  return last === undefined
    ? 'none yet'
    : `${messageStepLabels[last.step].toLowerCase()}, ${momentText(last.sentAt)}`;
}

function MessageItem({ message, mayStrike }: { message: Message; mayStrike: boolean }) {
  const strike = useOrderCommand(api.messages.strikeOut);
  const { step, toWhom, sentAt, personName, handed, channel, papers, struckReason } = message;
  const label = messageStepLabels[step];
  return (
    <li className={classes.item}>
      <div className={classes.row}>
        <span className={struckReason === null ? '' : classes.struck}>
          <strong>{label}</strong> to {toWhom}, {momentText(sentAt)}
        </span>
        {mayStrike && struckReason === null ? (
          <StrikeOutButton
            what={`the message of ${momentText(sentAt)}`}
            record={message}
            command={strike}
          />
        ) : null}
      </div>
      <p className={classes.quiet} style={{ margin: 0 }}>
        {messageChannelLabels[channel]}, {handedWords[handed]} by {personName}
        {papers.length === 0 ? '' : `, with ${papers.map(({ fileName }) => fileName).join(', ')}`}
        {struckReason === null ? '' : `. Struck out: ${struckReason}`}
      </p>
      <Fold title="What it said" hasRule={false}>
        <p className={classes.words}>
          <strong>{message.subject}</strong>
        </p>
        <p className={classes.words}>{message.body}</p>
      </Fold>
    </li>
  );
}

/** What was written to the customer, and the way to write the next. */
export function Messages() {
  const { order, isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  const { messages } = order;
  return (
    <OrderSection
      place="messages"
      title="Messages"
      state={messagesState(messages)}
      isBusy={isOpen}
      actions={
        isOffice ? (
          <Button variant="default" onClick={() => setOpen(true)}>
            Write a message
          </Button>
        ) : null
      }
    >
      <p className={classes.quiet}>The program sends nothing by itself.</p>
      <ul className={classes.list}>
        {messages.map((message) => (
          <MessageItem key={message.id} message={message} mayStrike={isOffice} />
        ))}
      </ul>
      {isOpen ? <MessageDialog first={usualStep(order)} onDone={() => setOpen(false)} /> : null}
    </OrderSection>
  );
}
