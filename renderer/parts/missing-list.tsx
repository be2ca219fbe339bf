import { Anchor } from '@mantine/core';
import { Link } from 'wouter';
import type { MissingItem } from '../../shared/gates.ts';
import { gateText, sectionWords } from './gate-text.ts';
import { Mark } from './mark.tsx';
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

function wordsFor({ item, section }: MissingItem): string {
  return item === 'target' ? 'Set the target' : sectionWords[section];
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

/** What a gate still needs, each with the way to put it right. */
export function MissingList({
  missing,
  wayTo,
  nameGates = false,
  showBarred = false,
}: MissingListProps) {
  return (
    <ul className={classes.list}>
      {missing.map((item) => (
        <li key={`${item.gate} ${item.item}`} className={classes.row}>
          <span className={classes.sentence}>
            <Mark kind={item.item === 'no-stop-finding' ? 'stop' : 'attention'}>
              {item.sentence}
            </Mark>
            {nameGates ? (
              <span className={classes.quiet}> Before {gateText(item.gate)}.</span>
            ) : null}
            {showBarred && item.override === 'never' ? (
              <span className={classes.quiet}> Nobody may let this pass.</span>
            ) : null}
          </span>
          <FixLink item={item} way={wayTo(item)} />
        </li>
      ))}
    </ul>
  );
}
