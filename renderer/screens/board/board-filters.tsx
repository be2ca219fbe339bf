import { Checkbox, SegmentedControl, Select, TextInput } from '@mantine/core';
import { type Room, rooms } from '../../../shared/stages.ts';
import classes from './board.module.css';
import type { BoardFilter, DueChoice } from './filter.ts';

interface BoardFiltersProps {
  filter: BoardFilter;
  onChange: (filter: BoardFilter) => void;
}

const roomChoices: { value: Room | 'all'; label: string }[] = [
  { value: 'all', label: 'All rooms' },
  ...rooms.map((room) => ({ value: room, label: room.replace(/^./, (c) => c.toUpperCase()) })),
];
const dueWords: { value: DueChoice; label: string }[] = [
  { value: 'any', label: 'Any date' },
  { value: 'late', label: 'Late' },
  { value: 'week', label: 'Due in 7 days' },
  { value: 'none', label: 'No date promised' },
];

export function BoardFilters({ filter, onChange }: BoardFiltersProps) {
  const set = (part: Partial<BoardFilter>) => onChange({ ...filter, ...part });
  return (
    <search className={classes.filters} aria-label="Filter the board">
      <SegmentedControl
        className={classes.rooms ?? ''}
        size="md"
        aria-label="Room"
        data={roomChoices}
        value={filter.room}
        onChange={(room) => set({ room })}
      />
      <TextInput
        aria-label="Number, customer or bow"
        placeholder="Find a card"
        value={filter.text}
        maxLength={200}
        w={160}
        onChange={(event) => set({ text: event.currentTarget.value })}
      />
      <Select
        aria-label="Due"
        data={dueWords}
        value={filter.due}
        w={155}
        onChange={(due) => due && set({ due })}
      />
      <div className={classes.check}>
        <Checkbox
          label="On hold"
          checked={filter.onHold}
          onChange={(event) => set({ onHold: event.currentTarget.checked })}
        />
      </div>
      <div className={classes.check}>
        <Checkbox
          label="Show closed"
          checked={filter.closed}
          onChange={(event) => set({ closed: event.currentTarget.checked })}
        />
      </div>
    </search>
  );
}
