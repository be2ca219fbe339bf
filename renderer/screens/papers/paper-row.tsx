import { Button } from '@mantine/core';
import { Link } from 'wouter';
import type { ListedPaper } from '../../../shared/contract/papers.ts';
import { paperChoices } from '../../../shared/papers.ts';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { copyLabels, formatLabels } from './paper-words.ts';
import classes from './papers-screen.module.css';

/** One paper that went out: what, for which order, when and by whom, and whether it is old. */
export function PaperRow({ paper, onAgain }: { paper: ListedPaper; onAgain: () => void }) {
  const { label } = paperChoices[paper.kind];
  const copy = copyLabels[paper.copy].toLowerCase();
  return (
    <li className={classes.row}>
      <div className={classes.words}>
        <strong>{label}</strong>{' '}
        {paper.orderId === null ? null : (
          <Link href={`/orders/${paper.orderId}`} className={classes.number ?? ''}>
            {paper.orderNumber}
          </Link>
        )}
        {paper.orderLine === '' ? null : <div>{paper.orderLine}</div>}
        <div className={classes.quiet}>
          {paper.action} {momentText(paper.madeAt)}, {paper.personName}; {copy},{' '}
          {formatLabels[paper.format]}, {paper.pages} {paper.pages === 1 ? 'page' : 'pages'}
        </div>
        {paper.outdated ? (
          <Mark kind="attention">outdated: the order has changed since</Mark>
        ) : null}
      </div>
      {paper.orderId === null && paper.aboutId === null ? null : (
        <Button
          variant="default"
          onClick={onAgain}
          aria-label={`Reprint ${label} ${paper.orderNumber ?? paper.orderLine} of ${momentText(paper.madeAt)}`}
        >
          Reprint
        </Button>
      )}
    </li>
  );
}
