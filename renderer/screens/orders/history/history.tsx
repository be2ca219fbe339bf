import { Button } from '@mantine/core';
import { useState } from 'react';
import { momentText } from '../../../parts/days.ts';
import { Panel } from '../../../parts/panel.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';

const firstShown = 30;

/** What happened to the order, newest first: who, what, and why. */
export function History() {
  const { history } = useOrder().order;
  const [isLong, setLong] = useState(false);
  const shown = isLong ? history : history.slice(0, firstShown);
  return (
    <Panel title="History">
      <ul className={classes.list}>
        {shown.map((item) => (
          <li key={item.id} className={classes.item}>
            <span className={classes.quiet}>
              {momentText(item.at)}, {item.personName}
            </span>
            <p className={classes.words}>{item.summary}</p>
            {item.reason === null ? null : <p className={classes.words}>Reason: {item.reason}</p>}
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
