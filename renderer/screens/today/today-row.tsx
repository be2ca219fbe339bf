import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { TodayItem } from '../../../shared/contract/today.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { queryClient } from '../../api/queries.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { Mark, type MarkKind } from '../../parts/mark.tsx';
import { hrefOf } from './place.ts';
import classes from './today.module.css';
import { whenText } from './words.ts';

/** Shape beside the words where somebody should look at once. */
function whenMark({ group, kind }: TodayItem): MarkKind | null {
  if (kind === 'expired-lot') return 'stop';
  return group === 'late' ? 'attention' : null;
}

function When({ item }: { item: TodayItem }) {
  const text = whenText(item);
  if (text === '') return null;
  const mark = whenMark(item);
  return (
    <span className={classes.when}>{mark === null ? text : <Mark kind={mark}>{text}</Mark>}</span>
  );
}

function Where({ item }: { item: TodayItem }) {
  const person = item.forPersonName === null ? '' : `, for ${item.forPersonName}`;
  return (
    <span className={classes.where}>
      {item.forRoom}
      {person}
    </span>
  );
}

/** Number and name where it is of an order, what of the stores it is about, then what is to be done; beside it, where and when. */
function Words({ item }: { item: TodayItem }) {
  const { number, who, what } = item;
  if (who === '') {
    return (
      <>
        <span className={classes.title}>
          {what} <Where item={item} />
        </span>
        <When item={item} />
      </>
    );
  }
  return (
    <>
      <span className={classes.title}>
        {number} <span className={number === null ? undefined : classes.who}>{who}</span>{' '}
        <Where item={item} />
      </span>
      <When item={item} />
      <span className={classes.what}>
        {item.kind === 'stop-finding' ? <Mark kind="stop">{what}</Mark> : what}
      </span>
    </>
  );
}

function Place({ href, children }: { href: string | null; children: ReactNode }) {
  return href === null ? (
    <div className={classes.row}>{children}</div>
  ) : (
    <Link href={href} className={`${classes.row} ${classes.leads}`}>
      {children}
    </Link>
  );
}

interface DoneProps {
  taskId: string;
  rowVersion: number;
  what: string;
  onDone: () => void;
}

function Done({ taskId, rowVersion, what, onDone }: DoneProps) {
  const command = useCommand(api.tasks.done, {
    onDone: () => {
      void queryClient.invalidateQueries({ queryKey: orpc.today.key() });
      onDone();
    },
  });
  return (
    <>
      <Button
        variant="default"
        loading={command.busy}
        aria-label={`Done: ${what}`}
        onClick={() => void command.run({ id: taskId, rowVersion, note: '' })}
      >
        Done
      </Button>
      {command.error === null ? null : (
        <div className={classes.trouble}>
          <CommandError command={command} />
        </div>
      )}
    </>
  );
}

interface TodayRowProps {
  item: TodayItem;
  /** The row goes away with its task: the focus must go somewhere that stays. */
  onDone: () => void;
}

export function TodayRow({ item, onDone }: TodayRowProps) {
  const { taskId, taskRowVersion } = item;
  return (
    <li className={classes.item}>
      <Place href={hrefOf(item)}>
        <Words item={item} />
      </Place>
      {taskId === null || taskRowVersion === null ? null : (
        <Done taskId={taskId} rowVersion={taskRowVersion} what={item.what} onDone={onDone} />
      )}
    </li>
  );
}
