import { Button, Kbd } from '@mantine/core';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { orpc } from '../../api/client.ts';
import { longDay } from '../../parts/days.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { AddTask } from './add-task.tsx';
import classes from './today.module.css';
import { TodayList } from './today-list.tsx';
import { useAddKey } from './use-add-key.ts';
import { useDay } from './use-day.ts';

/** A scale runs out of its day without anything being written down. */
const readAgainMs = 5 * 60_000;

/** What needs somebody, across all orders: what the shop looks at first. */
export function TodayScreen() {
  const day = useDay();
  const [adding, setAdding] = useState(0);
  const [asked, setAsked] = useState(0);
  const add = () => {
    setAsked(asked + 1);
    setAdding(asked + 1);
  };
  useAddKey(add);
  const list = useQuery({
    ...orpc.today.get.queryOptions({ input: { day } }),
    placeholderData: keepPreviousData,
    refetchInterval: readAgainMs,
  });
  return (
    <Page
      title="Today"
      actions={
        <>
          <span className={classes.day}>{longDay(day)}</span>
          <Button
            variant="default"
            onClick={add}
            rightSection={
              <Kbd visibleFrom="sm" aria-hidden="true">
                n
              </Kbd>
            }
          >
            Add a task
          </Button>
        </>
      }
    >
      {adding === 0 ? null : <AddTask day={day} times={adding} onClose={() => setAdding(0)} />}
      {list.error === null ? null : (
        <ErrorNote error={list.error} onAgain={() => void list.refetch()} busy={list.isFetching} />
      )}
      {list.data === undefined && list.error === null ? <BusyNote /> : null}
      {list.data === undefined ? null : (
        <TodayList items={list.data.items} ordersInWork={list.data.ordersInWork} />
      )}
    </Page>
  );
}
