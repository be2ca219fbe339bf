import { SegmentedControl, Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { type Room, rooms } from '../../../shared/stages.ts';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import type { TodayFilter } from './filter.ts';
import classes from './today.module.css';

const roomChoices: { value: Room | 'all'; label: string }[] = [
  { value: 'all', label: 'All rooms' },
  ...rooms.map((room) => ({ value: room, label: room.replace(/^./, (c) => c.toUpperCase()) })),
];

interface TodayFiltersProps {
  filter: TodayFilter;
  onChange: (filter: TodayFilter) => void;
}

export function TodayFilters({ filter, onChange }: TodayFiltersProps) {
  const me = useWho();
  const people = useQuery(orpc.people.list.queryOptions());
  const others = (people.data ?? []).filter(
    ({ id, active }) => id !== me?.id && (active || id === filter.person),
  );
  const choices = [
    { value: 'all', label: 'Everything' },
    ...(me === null ? [] : [{ value: me.id, label: 'My own tasks' }]),
    ...others.map(({ id, name }) => ({ value: id, label: `Tasks of ${name}` })),
  ];
  return (
    <search className={classes.filters} aria-label="Filter the list">
      <SegmentedControl
        visibleFrom="sm"
        size="md"
        aria-label="Room"
        data={roomChoices}
        value={filter.room}
        onChange={(room) => onChange({ ...filter, room })}
      />
      <Select
        hiddenFrom="sm"
        className={classes.choice ?? ''}
        aria-label="Room"
        data={roomChoices}
        value={filter.room}
        onChange={(room) => room !== null && onChange({ ...filter, room })}
      />
      <Select
        className={classes.choice ?? ''}
        aria-label="For whom"
        data={choices}
        value={filter.person}
        onChange={(person) => person !== null && onChange({ ...filter, person })}
      />
    </search>
  );
}
