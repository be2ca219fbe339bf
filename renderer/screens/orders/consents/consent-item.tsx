import { Button } from '@mantine/core';
import { useState } from 'react';
import {
  type ConsentState,
  channelLabels,
  consentLabels,
  consentStateLabels,
} from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import { fullDay, momentText, moneyText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark, type MarkKind } from '../../../parts/mark.tsx';
import { PaperDialog } from '../../papers/paper-dialog.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { readOrdersAgain } from '../use-order-command.ts';
import { RemindForm } from './remind-form.tsx';
import { SignatureShown } from './signature-pad.tsx';

const marks: Record<ConsentState, MarkKind> = {
  waiting: 'attention',
  granted: 'done',
  declined: 'stop',
  withdrawn: 'stop',
  outdated: 'attention',
};

/** A change of price with its sign. */
export function costChangeText(cents: number): string {
  return cents === 0 ? '' : `, price ${cents > 0 ? '+' : '-'}${moneyText(Math.abs(cents))}`;
}

const answerLabels: Record<Consent['answers'][number]['answer'], string> = {
  granted: 'Granted',
  declined: 'Declined',
  withdrawn: 'Withdrawn',
};

function Answer({ answer }: { answer: Consent['answers'][number] }) {
  const contact = answer.contact === '' ? '' : ` ${answer.contact}`;
  return (
    <p className={classes.words}>
      <strong>{answerLabels[answer.answer]}</strong> by {answer.answeredBy},{' '}
      {momentText(answer.answeredAt)}, {channelLabels[answer.channel].toLowerCase()}
      {contact}
      {costChangeText(answer.costChangeCents)}
      {answer.words === '' ? '' : `: "${answer.words}"`}
      <span className={classes.quiet}> Written down by {answer.recordedBy}.</span>
      {answer.attachment === null ? null : (
        <span className={classes.quiet}> Shown by {answer.attachment.fileName}.</span>
      )}
    </p>
  );
}

/** Whether the text kept is the one that was asked. */
function Verified({ consent }: { consent: Consent }) {
  const { verified, textSha256, wordingVersion } = consent;
  const isSame = verified.text && verified.subject && verified.answers;
  const from = wordingVersion === 0 ? 'built-in wording' : `wording version ${wordingVersion}`;
  return (
    <>
      {isSame ? (
        <Mark kind="done">Text as it was asked, checked against its hash</Mark>
      ) : (
        <Mark kind="stop">
          This is not the text that was asked: its hash differs. It counts for nothing. Restore the
          records from a backup, or ask again.
        </Mark>
      )}
      <p className={classes.quiet} style={{ overflowWrap: 'anywhere' }}>
        From the {from}. SHA-256 {textSha256}
      </p>
    </>
  );
}

/** Reminders that went out, and the way to record one. */
function Reminders({ consent, mayRemind }: { consent: Consent; mayRemind: boolean }) {
  const [isOpen, setOpen] = useState(false);
  const { reminders, remindOn, state } = consent;
  return (
    <>
      {reminders.map(({ id, sentAt, how, note, personName }) => (
        <p key={id} className={classes.quiet} style={{ margin: 0 }}>
          Reminded {momentText(sentAt)} by {personName}: {how}
          {note === '' ? '' : `. ${note}`}
        </p>
      ))}
      {remindOn === null ? null : (
        <p className={classes.quiet} style={{ margin: 0 }}>
          Next reminder {fullDay(remindOn)}.
        </p>
      )}
      {isOpen ? <RemindForm consent={consent} onDone={() => setOpen(false)} /> : null}
      {state !== 'waiting' || !mayRemind || isOpen ? null : (
        <Button
          variant="subtle"
          px={0}
          aria-label={`Record a reminder: ${consentLabels[consent.kind]}`}
          onClick={() => setOpen(true)}
        >
          Record a reminder
        </Button>
      )}
    </>
  );
}

/** This very text with its answers on paper, as often as anybody asks for it. */
function PrintIt({ consent }: { consent: Consent }) {
  const { id, number } = useOrder().order.card;
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button
        variant="subtle"
        px={0}
        aria-label={`Print this consent: ${consentLabels[consent.kind]}`}
        onClick={() => setOpen(true)}
      >
        Print this consent
      </Button>
      {isOpen ? (
        <PaperDialog
          kind="consent-form"
          orderId={id}
          aboutId={consent.id}
          number={number}
          onIssued={readOrdersAgain}
          onClose={() => setOpen(false)}
        />
      ) : null}
    </>
  );
}

interface ConsentItemProps {
  consent: Consent;
  /** Null where the person may not record answers. */
  onAnswer: (() => void) | null;
}

export function ConsentItem({ consent, onAnswer }: ConsentItemProps) {
  const last = consent.answers.at(-1)?.answer ?? null;
  const label = consentLabels[consent.kind];
  const action =
    (last === null && 'Record the answer') || (last === 'granted' && 'Record a withdrawal') || null;
  return (
    <li className={classes.item}>
      <div className={classes.row}>
        <Mark kind={marks[consent.state]}>
          {label}: {consentStateLabels[consent.state]}
        </Mark>
        {action === null || onAnswer === null ? null : (
          <Button
            variant={last === null ? 'default' : 'subtle'}
            {...(last === null ? {} : { px: 0 })}
            aria-label={`${action}: ${label}`}
            onClick={onAnswer}
          >
            {action}
          </Button>
        )}
      </div>
      <p className={classes.quiet} style={{ margin: 0 }}>
        Asked {momentText(consent.askedAt)} by {consent.askedBy}: {consent.askedHow}
      </p>
      {consent.answers.map((answer) => (
        <div key={answer.id}>
          <Answer answer={answer} />
          {answer.signature === null ? null : <SignatureShown signature={answer.signature} />}
        </div>
      ))}
      <Reminders consent={consent} mayRemind={onAnswer !== null} />
      <Fold title="The text that was asked" hasRule={false}>
        <p className={classes.words}>{consent.text}</p>
        <Verified consent={consent} />
        <PrintIt consent={consent} />
      </Fold>
    </li>
  );
}
