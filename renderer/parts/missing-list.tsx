import { Anchor } from '@mantine/core';
import { Link } from 'wouter';
import type { MissingItem } from '../../shared/gates.ts';
import { gateText, sectionWords } from './gate-text.ts';
import { Mark } from './mark.tsx';
import { groupsOf, leadOf, restOf } from './missing-groups.ts';
import classes from './missing-list.module.css';

/** Where a missing item is put right: on another page, or in a form of this one. */
export type WayTo = { href: string } | { open: () => void };

interface MissingListProps {
  missing: readonly MissingItem[];
  wayTo: (item: MissingItem) => WayTo;
  /** Says of each what it is missing for, where a way leads through several gates. */
  nameGates?: boolean;
  /** Marks what nobody may let pass. */
  showBarred?: boolean;
}

/** Where an item is put right in another form than its section's first. */
const itemWords: Partial<Record<string, string>> = {
  target: 'Set the target',
  tracking: 'Give the tracking number',
  'belongings-back': 'Tick the belongings',
  'last-grit': 'Record the sanding',
  'finish-system': 'Choose the finish',
  air: 'Read the air',
};

function wordsFor({ item, section }: MissingItem): string {
  return itemWords[item] ?? sectionWords[section];
}

function FixLink({ item, way }: { item: MissingItem; way: WayTo }) {
  const words = wordsFor(item);
  if ('href' in way) {
    return (
      <Link className={classes.link ?? ''} href={way.href}>
        {words}
      </Link>
    );
  }
  return (
    <Anchor component="button" type="button" className={classes.link} onClick={way.open}>
      {words}
    </Anchor>
  );
}

function One({ item, showBarred }: { item: MissingItem; showBarred: boolean }) {
  return (
    <>
      <Mark kind={item.item === 'no-stop-finding' ? 'stop' : 'attention'}>{item.sentence}</Mark>
      {showBarred && item.override === 'never' ? (
        <span className={classes.quiet}> Nobody may let this pass.</span>
      ) : null}
    </>
  );
}

interface ManyProps {
  first: MissingItem;
  items: readonly MissingItem[];
  showBarred: boolean;
}

/** Several that are put right in one place: what they have in common once, then each. */
function Many({ first, items, showBarred }: ManyProps) {
  const barred = items.filter((item) => showBarred && item.override === 'never');
  const others = items.filter((item) => !barred.includes(item));
  return (
    <>
      <Mark kind="attention">
        {leadOf(first)}: {items.length}
      </Mark>
      {barred.length === 0 ? null : (
        <span className={classes.quiet}>{restOf(barred)}. Nobody may let these pass.</span>
      )}
      {others.length === 0 ? null : <span className={classes.quiet}>{restOf(others)}.</span>}
    </>
  );
}

/** What a gate still needs, each with the way to put it right. */
export function MissingList({
  missing,
  wayTo,
  nameGates = false,
  showBarred = false,
}: MissingListProps) {
  return (
    <ul className={classes.list}>
      {groupsOf(missing).map(({ first, items }) => (
        <li key={`${first.gate} ${first.item}`} className={classes.row}>
          <span className={classes.sentence}>
            {items.length === 1 ? (
              <One item={first} showBarred={showBarred} />
            ) : (
              <Many first={first} items={items} showBarred={showBarred} />
            )}
            {nameGates ? (
              <span className={classes.quiet}> Before {gateText(first.gate)}.</span>
            ) : null}
          </span>
          <FixLink item={first} way={wayTo(first)} />
        </li>
      ))}
    </ul>
  );
}
