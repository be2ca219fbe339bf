import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Paper } from '../../../../shared/contract/papers.ts';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { PaperDialog } from '../../papers/paper-dialog.tsx';
import { copyLabels, formatLabels, paperLabels } from '../../papers/paper-words.ts';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { readOrdersAgain } from '../use-order-command.ts';

function PaperLine({ paper }: { paper: Paper }) {
  return (
    <li className={classes.item}>
      <strong>{paperLabels[paper.kind]}</strong>, {copyLabels[paper.copy].toLowerCase()},{' '}
      {formatLabels[paper.format]}
      <p className={classes.quiet} style={{ margin: 0 }}>
        {paper.action} {momentText(paper.madeAt)}, {paper.personName}, {paper.pages}{' '}
        {paper.pages === 1 ? 'page' : 'pages'}
      </p>
      {paper.outdated ? <Mark kind="attention">outdated: the order has changed since</Mark> : null}
    </li>
  );
}

/** Papers of this order: what went out, and the way to make more. */
export function OrderPapers() {
  const { order } = useOrder();
  const [kind, setKind] = useState<Paper['kind'] | null>(null);
  const papers = order.papers.toSorted((a, b) => b.madeAt.localeCompare(a.madeAt));
  return (
    <Panel title="Papers">
      <div className={classes.buttons} style={{ marginBottom: 12 }}>
        <Button variant="default" onClick={() => setKind('work-order')}>
          Work order
        </Button>
        <Button variant="default" onClick={() => setKind('shipping-tag')}>
          Shipping tag
        </Button>
      </div>
      {papers.length === 0 ? (
        <p className={classes.quiet}>Nothing printed or saved yet.</p>
      ) : (
        <ul className={classes.list}>
          {papers.map((paper) => (
            <PaperLine key={paper.id} paper={paper} />
          ))}
        </ul>
      )}
      {kind === null ? null : (
        <PaperDialog
          key={kind}
          kind={kind}
          orderId={order.card.id}
          number={order.card.number}
          onIssued={readOrdersAgain}
          onClose={() => setKind(null)}
        />
      )}
    </Panel>
  );
}
