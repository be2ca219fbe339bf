import { Button, TextInput } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { gritText } from '../../../shared/grit.ts';
import { categories } from '../../../shared/stores.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { CategoryPanel } from './category-panel.tsx';
import { CautionsPanel } from './cautions-panel.tsx';
import { AddConsumable } from './consumable-form.tsx';
import { ExpiringPanel } from './expiring-panel.tsx';
import classes from './stores.module.css';

type Shelves = ContractOutputs['stores']['list'];

function Body({ shelves }: { shelves: Shelves }) {
  const [typed, setTyped] = useState('');
  const wanted = typed.trim().toLowerCase();
  const { consumables } = shelves;
  if (consumables.length === 0) {
    return (
      <EmptyNote title="Nothing in the stores yet">
        Add the first consumable, an abrasive or a can of finish, then receive what you have of it.
      </EmptyNote>
    );
  }
  const shown = consumables.filter(({ name, shelf, barcode, grit }) =>
    [name, shelf, barcode, grit === null ? '' : gritText(grit)]
      .join(' ')
      .toLowerCase()
      .includes(wanted),
  );
  return (
    <>
      <TextInput
        label="Search"
        description="Name, shelf, grit or barcode. A shelf or lot label scanned anywhere opens its issue form."
        leftSection={<IconSearch size={20} aria-hidden="true" />}
        value={typed}
        maxLength={120}
        maw={640}
        mb="md"
        autoComplete="off"
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      <div className={classes.stack}>
        {wanted === '' ? <ExpiringPanel lots={shelves.expiring} /> : null}
        {shown.length === 0 ? <EmptyNote title="Nothing fits">Search for less.</EmptyNote> : null}
        {categories.map((category) => {
          const own = shown.filter((each) => each.category === category);
          return own.length === 0 ? null : (
            <CategoryPanel key={category} category={category} consumables={own} />
          );
        })}
        {wanted === '' ? (
          <CautionsPanel cautions={shelves.cautions} whoDecides={shelves.whoDecides} />
        ) : null}
      </div>
    </>
  );
}

/** What the shop works with, by category: on hand, next expiry, how long it lasts, what is short. */
export function StoresScreen() {
  const list = useQuery(orpc.stores.list.queryOptions());
  const [adding, add] = useDisclosure(false);
  const [, go] = useLocation();
  const short = list.data?.consumables.filter(({ marks }) => marks.includes('order')).length ?? 0;
  return (
    <Page
      title="Stores"
      actions={
        <>
          <Link href="/stores/shopping">Shopping list ({short})</Link>
          <Button onClick={add.open}>Add a consumable</Button>
        </>
      }
    >
      {list.data === undefined ? (
        list.error === null ? (
          <BusyNote />
        ) : (
          <ErrorNote error={list.error} onAgain={() => void list.refetch()} />
        )
      ) : (
        <Body shelves={list.data} />
      )}
      {adding ? (
        <AddConsumable onClose={add.close} onAdded={(id) => go(`/stores/${id}?do=receive`)} />
      ) : null}
    </Page>
  );
}
