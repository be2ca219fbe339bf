import { Button } from '@mantine/core';
import type { Entry } from '../../../../shared/contract/entries.ts';
import { entryKinds, type EntryItem as Item } from '../../../../shared/entries.ts';
import { api } from '../../../api/client.ts';
import { fullDay } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import pageClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { StrikeOut } from '../strike-out.tsx';
import classes from './bench-log.module.css';

/** How many older entries of one kind are shown besides the latest. */
const shownBefore = 3;

function EntryLine({ entry }: { entry: Entry }) {
  const isStruck = entry.struckReason !== null;
  const { label } = entryKinds[entry.item];
  return (
    <div className={classes.entry}>
      <div className={isStruck ? pageClasses.struck : undefined}>
        {entry.outcome === 'ok' ? (
          <Mark kind="done">in order</Mark>
        ) : (
          <Mark kind="attention">not in order</Mark>
        )}{' '}
        <span className={pageClasses.quiet}>
          {fullDay(entry.doneOn)}, {entry.personName}
        </span>
        {entry.note === '' ? null : <p className={pageClasses.words}>{entry.note}</p>}
        {entry.overrideReason === null ? null : (
          <p className={pageClasses.words}>Let pass by the owner: {entry.overrideReason}</p>
        )}
      </div>
      {isStruck ? (
        <span>Struck out: {entry.struckReason}</span>
      ) : (
        <StrikeOut
          what={`${label}, ${fullDay(entry.doneOn)}`}
          record={entry}
          fn={api.entries.strikeOut}
        />
      )}
    </div>
  );
}

/** One kind of entry: what was written last, what before, and the way to write it, where there is one. */
export function EntryItem({ item, entries }: { item: Item; entries: readonly Entry[] }) {
  const { open } = useOrder();
  const { label, retired } = entryKinds[item];
  const isWritten = entries.some((entry) => entry.struckReason === null);
  return (
    <li className={classes.item}>
      <div className={pageClasses.row}>
        <h4 className={classes.label}>{label}</h4>
        {retired === null ? (
          <Button
            variant={isWritten ? 'subtle' : 'default'}
            aria-label={`${isWritten ? 'Record again' : 'Record'}: ${label}`}
            onClick={() => open('bench-log', item)}
          >
            {isWritten ? 'Record again' : 'Record'}
          </Button>
        ) : null}
      </div>
      {retired === null && isWritten ? null : (
        <span className={pageClasses.quiet}>{retired ?? 'not recorded yet'}</span>
      )}
      {entries.slice(0, shownBefore + 1).map((entry) => (
        <EntryLine key={entry.id} entry={entry} />
      ))}
      {entries.length > shownBefore + 1 ? (
        <Fold title={`${entries.length - shownBefore - 1} earlier`} hasRule={false}>
          {entries.slice(shownBefore + 1).map((entry) => (
            <EntryLine key={entry.id} entry={entry} />
          ))}
        </Fold>
      ) : null}
    </li>
  );
}
