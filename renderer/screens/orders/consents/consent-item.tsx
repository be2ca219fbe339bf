import { Button } from '@mantine/core';
import {
  type ConsentState,
  channelLabels,
  consentLabels,
  consentStateLabels,
} from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import { momentText, moneyText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark, type MarkKind } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';

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

function Answer({ answer }: { answer: Consent['answers'][number] }) {
  const contact = answer.contact === '' ? '' : ` ${answer.contact}`;
  return (
    <p className={classes.words}>
      <strong>{answer.answer}</strong> by {answer.answeredBy}, {momentText(answer.answeredAt)},{' '}
      {channelLabels[answer.channel].toLowerCase()}
      {contact}
      {costChangeText(answer.costChangeCents)}
      {answer.words === '' ? '' : `: "${answer.words}"`}
      <span className={classes.quiet}> Written down by {answer.recordedBy}.</span>
    </p>
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
        <Answer key={answer.id} answer={answer} />
      ))}
      <Fold title="The text that was asked" hasRule={false}>
        <p className={classes.words}>{consent.text}</p>
      </Fold>
    </li>
  );
}
