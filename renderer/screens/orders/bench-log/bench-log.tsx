import { Button } from '@mantine/core';
import type { Entry } from '../../../../shared/contract/entries.ts';
import { entryKinds, type EntryItem as Item } from '../../../../shared/entries.ts';
import { Fold } from '../../../parts/fold.tsx';
import { gateText } from '../../../parts/gate-text.ts';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import classes from './bench-log.module.css';
import { EntryForm } from './entry-form.tsx';
import { type EntryGroup, groupsFor, logState } from './entry-groups.ts';
import { EntryItem } from './entry-item.tsx';

interface GroupProps {
  group: EntryGroup;
  byItem: ReadonlyMap<Item, readonly Entry[]>;
}

function Group({ group, byItem }: GroupProps) {
  return (
    <div className={classes.group}>
      <h3 className={classes.heading}>Before {gateText(group.gate)}</h3>
      <ul className={classes.items}>
        {group.items.map((item) => (
          <EntryItem key={item} item={item} entries={byItem.get(item) ?? []} />
        ))}
      </ul>
    </div>
  );
}

interface FoldedProps extends Pick<GroupProps, 'byItem'> {
  title: string;
  groups: readonly EntryGroup[];
}

function Folded({ title, groups, byItem }: FoldedProps) {
  if (groups.length === 0) return null;
  return (
    <Fold title={title} said={countText(groups, byItem)}>
      {groups.map((group) => (
        <Group key={group.gate} group={group} byItem={byItem} />
      ))}
    </Fold>
  );
}

function countText(groups: readonly EntryGroup[], byItem: GroupProps['byItem']): string {
  const items = groups.flatMap((group) => group.items);
  const written = items.filter((item) => byItem.has(item)).length;
  return `${written} of ${items.length} recorded`;
}

/** The entry to begin with: what is needed next, else what any order may need. */
function firstOf(group: EntryGroup | undefined): Item {
  return group?.items.find((item) => entryKinds[item].retired === null) ?? 'paid-or-terms';
}

/** Dated entries of the work, those that the next gates need first. */
export function BenchLog() {
  const { order, opened, open } = useOrder();
  const { route, stage } = order.card;
  const byItem = Map.groupBy(order.entries, (entry) => entry.item);
  const groups = groupsFor(
    { route, stage, next: order.next?.stage ?? null },
    new Set(byItem.keys()),
  );
  const needed = groups.now[0] ?? groups.later[0];
  const opening = opened['bench-log'];
  return (
    <OrderSection
      place="bench-log"
      title="Bench log"
      state={logState(order.entries, groups.now)}
      actions={
        opening === undefined ? (
          <Button variant="default" onClick={() => open('bench-log')}>
            Record an entry
          </Button>
        ) : null
      }
    >
      {opening === undefined ? null : <EntryForm opening={opening} first={firstOf(needed)} />}
      {groups.now.map((group) => (
        <Group key={group.gate} group={group} byItem={byItem} />
      ))}
      <Folded title="Needed later" groups={groups.later} byItem={byItem} />
      <Folded title="From the stages before" groups={groups.before} byItem={byItem} />
    </OrderSection>
  );
}
