import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { ShoppingItem } from '../../../shared/contract/stores.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { orpc } from '../../api/client.ts';
import { fullDay } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { OrderedForm } from './reorder-panel.tsx';
import { shoppingText, wantedText } from './shopping-text.ts';
import classes from './stores.module.css';

function Item({ item }: { item: ShoppingItem }) {
  const [isOpen, setOpen] = useState(false);
  const already = item.onOrder + (item.quantity ?? 0);
  return (
    <li>
      <div className={classes.wish}>
        <span>
          <Link href={`/stores/${item.consumableId}`} className={classes.way ?? ''}>
            {item.name}
          </Link>
          <span className={classes.line}>{item.why}</span>
        </span>
        <span className={classes.amount}>{wantedText(item)}</span>
        <Button
          className={classes.unprinted ?? ''}
          variant="default"
          aria-label={`Ordered: ${item.name}`}
          onClick={() => setOpen(true)}
        >
          Ordered
        </Button>
      </div>
      {isOpen ? (
        <OrderedForm
          of={{ ...item, id: item.consumableId }}
          start={item.quantity === null ? null : already}
          onClose={() => setOpen(false)}
        />
      ) : null}
    </li>
  );
}

function List({ list }: { list: ContractOutputs['stores']['shoppingList'] }) {
  if (list.items.length === 0) {
    return (
      <EmptyNote title="Nothing to buy">
        What falls to its reorder point, or runs out, comes onto this list by itself.
      </EmptyNote>
    );
  }
  return (
    <ul className={classes.rows} aria-label="To buy">
      {list.items.map((item) => (
        <Item key={item.consumableId} item={item} />
      ))}
    </ul>
  );
}

/** What to buy, how much of it and why; to copy, to print, and to tick off once it is ordered. */
export function ShoppingScreen() {
  const list = useQuery(orpc.stores.shoppingList.queryOptions());
  const [copied, setCopied] = useState<'no' | 'yes' | 'failed'>('no');
  const copy = async () => {
    if (list.data === undefined) return;
    try {
      await navigator.clipboard.writeText(shoppingText(list.data.items, list.data.today));
      setCopied('yes');
    } catch {
      setCopied('failed');
    }
  };
  const hasItems = list.data !== undefined && list.data.items.length > 0;
  return (
    <Page
      title="Shopping list"
      actions={
        <span className={`${classes.buttons} ${classes.unprinted}`}>
          <Link href="/stores" className={classes.way ?? ''}>
            All stores
          </Link>
          <Button variant="default" disabled={!hasItems} onClick={() => void copy()}>
            Copy
          </Button>
          <Button variant="default" disabled={!hasItems} onClick={() => window.print()}>
            Print
          </Button>
        </span>
      }
    >
      <div role="status">
        {copied === 'yes' ? <Mark kind="done">Copied as text.</Mark> : null}
        {copied === 'failed' ? (
          <Mark kind="attention">It could not be copied here. Print it instead.</Mark>
        ) : null}
      </div>
      {list.data === undefined ? null : (
        <p className={classes.quiet}>As of {fullDay(list.data.today)}.</p>
      )}
      {list.data !== undefined ? (
        <List list={list.data} />
      ) : list.error === null ? (
        <BusyNote />
      ) : (
        <ErrorNote error={list.error} onAgain={() => void list.refetch()} />
      )}
    </Page>
  );
}
