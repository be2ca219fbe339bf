import { Button } from '@mantine/core';
import { useSessionStorage } from '@mantine/hooks';
import { Link } from 'wouter';
import {
  type TodayGroup as Group,
  type TodayItem,
  todayGroups,
} from '../../../shared/contract/today.ts';
import { useWho } from '../../api/who.ts';
import { EmptyNote } from '../../parts/notes.tsx';
import { everything, fits, hides, type TodayFilter } from './filter.ts';
import classes from './today.module.css';
import { TodayFilters } from './today-filters.tsx';
import { anchorOf, TodayGroup } from './today-group.tsx';
import { groupTitles } from './words.ts';

function Nothing({ ordersInWork }: { ordersInWork: number }) {
  const isBench = useWho()?.role === 'bench';
  if (ordersInWork > 0) {
    return (
      <EmptyNote title="Nothing is due and nobody is waited for">
        <p>
          Look at <Link href="/board">the board</Link>: what stands there may go on.
        </p>
      </EmptyNote>
    );
  }
  return (
    <EmptyNote title="No orders in work">
      <p>
        {isBench ? (
          'The office takes in the first request.'
        ) : (
          <>
            <Link href="/intake">Take in a request</Link>: a call, a letter, or a box on the table.
          </>
        )}
      </p>
    </EmptyNote>
  );
}

interface TodayListProps {
  items: readonly TodayItem[];
  ordersInWork: number;
}

/** The list in its parts, what is due beside what is not; or what to do where there is none. */
export function TodayList({ items, ordersInWork }: TodayListProps) {
  const [filter, setFilter] = useSessionStorage<TodayFilter>({
    key: 'tillermark-today-filter',
    defaultValue: everything,
    getInitialValueInEffect: false,
  });
  if (items.length === 0) return <Nothing ordersInWork={ordersInWork} />;
  const shown = items.filter((item) => fits(item, filter));
  const groups = Map.groupBy(shown, ({ group }) => group);
  return (
    <>
      <div className={classes.tools}>
        <TodayFilters filter={filter} onChange={setFilter} />
        <Counts groups={groups} />
      </div>
      {shown.length === 0 && hides(filter) ? (
        <EmptyNote title="Nothing fits the filter">
          <Button variant="default" onClick={() => setFilter(everything)}>
            Clear the filter
          </Button>
        </EmptyNote>
      ) : (
        <Groups groups={groups} />
      )}
    </>
  );
}

interface GroupsProps {
  groups: ReadonlyMap<Group, readonly TodayItem[]>;
}

/** How much there is of each part, on the first screen whatever its length, and the way there. */
function Counts({ groups }: GroupsProps) {
  const used = todayGroups.filter((group) => groups.has(group));
  if (used.length === 0) return null;
  return (
    <nav className={classes.counts} aria-label="Parts of the list">
      {used.map((group) => (
        <a key={group} href={`#${anchorOf(group)}`}>
          {groupTitles[group]} <strong>{groups.get(group)?.length ?? 0}</strong>
        </a>
      ))}
    </nav>
  );
}

function Groups({ groups }: GroupsProps) {
  const used = todayGroups.filter((group) => group === 'today' || groups.has(group));
  const isDue = (group: Group) => group === 'late' || group === 'today';
  const columns = [used.filter(isDue), used.filter((group) => !isDue(group))];
  return (
    <div className={classes.columns}>
      {columns
        .filter((column) => column.length > 0)
        .map((column) => (
          <div key={column[0]} className={classes.column}>
            {column.map((group) => (
              <TodayGroup key={group} group={group} items={groups.get(group) ?? []} />
            ))}
          </div>
        ))}
    </div>
  );
}
