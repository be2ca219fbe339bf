import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { DoneItem } from '../../../../shared/contract/undo.ts';
import { orpc } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { ErrorNote } from '../../../parts/notes.tsx';
import { Panel } from '../../../parts/panel.tsx';
import lines from '../../../parts/undo/done-lines.module.css';
import { UndoLine } from '../../../parts/undo/undo-line.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { doneByLine } from './done-lines.ts';

const firstShown = 6;

/** What happened to the order, newest first: who, what, and why, with the way to take it back. */
export function History() {
  const { history, card } = useOrder().order;
  const recent = useQuery(orpc.undo.recent.queryOptions({ input: { orderId: card.id } }));
  const done = doneByLine(
    recent.data ?? [],
    history.map((item) => item.id),
  );
  const [isLong, setLong] = useState(false);
  const shown = isLong ? history : history.slice(0, firstShown);
  return (
    <Panel title="History">
      {recent.error === null ? null : (
        <ErrorNote error={recent.error} onAgain={() => void recent.refetch()} />
      )}
      <ul className={lines.list}>
        {shown.map((item) => (
          <li key={item.id} className={lines.line}>
            <div className={lines.said}>
              <span className={classes.quiet}>
                {momentText(item.at)}, {item.personName}
              </span>
              <p className={classes.words}>{item.summary}</p>
              {item.reason === null ? null : <p className={classes.words}>Reason: {item.reason}</p>}
            </div>
            <Done item={done.get(item.id)} />
          </li>
        ))}
      </ul>
      {history.length > shown.length ? (
        <Button variant="default" mt="md" onClick={() => setLong(true)}>
          Show all {history.length}
        </Button>
      ) : null}
    </Panel>
  );
}

function Done({ item }: { item: DoneItem | undefined }) {
  return item === undefined ? null : <UndoLine item={item} />;
}
