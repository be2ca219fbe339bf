import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { orpc } from '../../api/client.ts';
import { momentText } from '../days.ts';
import { BusyNote, ErrorNote } from '../notes.tsx';
import { Panel } from '../panel.tsx';
import classes from './done-lines.module.css';
import words from './undo-line.module.css';
import { UndoLine } from './undo-line.tsx';

const firstShown = 5;

/** What was changed of a bow or a customer, newest first, with the way to take it back. */
export function ChangesPanel({ of }: { of: { bowId: string } | { customerId: string } }) {
  const recent = useQuery(orpc.undo.recent.queryOptions({ input: of }));
  const [isLong, setLong] = useState(false);
  if (recent.data?.length === 0) return null;
  const items = recent.data ?? [];
  const shown = isLong ? items : items.slice(0, firstShown);
  return (
    <Panel title="Changes">
      {recent.data === undefined && recent.error === null ? <BusyNote /> : null}
      {recent.error === null ? null : (
        <ErrorNote error={recent.error} onAgain={() => void recent.refetch()} />
      )}
      <ul className={classes.list}>
        {shown.map((item) => (
          <li key={item.commandId} className={classes.line}>
            <div className={classes.said}>
              <span className={words.quiet}>
                {momentText(item.at)}, {item.personName}
              </span>
              <p className={words.words}>{item.what}</p>
            </div>
            <UndoLine item={item} />
          </li>
        ))}
      </ul>
      {items.length > shown.length ? (
        <Button variant="default" mt="md" onClick={() => setLong(true)}>
          Show all {items.length}
        </Button>
      ) : null}
    </Panel>
  );
}
