import { Button, Select, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearchParams } from 'wouter';
import type { ListedPaper } from '../../../shared/contract/papers.ts';
import { paperChoices, paperKind, paperKinds } from '../../../shared/papers.ts';
import { orpc } from '../../api/client.ts';
import { queryClient } from '../../api/queries.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { PaperDialog } from './paper-dialog.tsx';
import { PaperRow } from './paper-row.tsx';
import classes from './papers-screen.module.css';

function readPapersAgain(): void {
  void queryClient.invalidateQueries({ queryKey: orpc.papers.list.key() });
  void queryClient.invalidateQueries({ queryKey: orpc.orders.key() });
}

interface PaperListProps {
  kind: ListedPaper['kind'] | null;
  orderNumber: string;
  onAgain: (paper: ListedPaper) => void;
}

function PaperList({ kind, orderNumber, onAgain }: PaperListProps) {
  const [page, setPage] = useState(0);
  const list = useQuery({
    ...orpc.papers.list.queryOptions({ input: { kind, orderNumber, page } }),
    placeholderData: keepPreviousData,
  });
  if (list.error !== null) {
    return <ErrorNote error={list.error} onAgain={() => void list.refetch()} />;
  }
  if (list.data === undefined) return <BusyNote />;
  const { papers, more } = list.data;
  if (papers.length === 0 && page === 0) {
    return kind === null && orderNumber === '' ? (
      <EmptyNote title="No papers yet">Print or save one on the page of an order.</EmptyNote>
    ) : (
      <EmptyNote title="No paper fits">Try a part of the order number, or all kinds.</EmptyNote>
    );
  }
  return (
    <>
      <ul className={classes.rows} aria-label="Papers that went out">
        {papers.map((paper) => (
          <PaperRow key={paper.id} paper={paper} onAgain={() => onAgain(paper)} />
        ))}
      </ul>
      {page === 0 && !more ? null : (
        <nav className={classes.pager} aria-label="Pages of papers">
          <Button variant="default" disabled={page === 0} onClick={() => setPage(page - 1)}>
            Newer
          </Button>
          <span>Page {page + 1}</span>
          <Button variant="default" disabled={!more} onClick={() => setPage(page + 1)}>
            Older
          </Button>
        </nav>
      )}
    </>
  );
}

/** Every paper that went out, newest first, and the way to make one again. */
export function PapersScreen() {
  const [params, setParams] = useSearchParams();
  const [typed, setTyped] = useState(params.get('order') ?? '');
  const [orderNumber] = useDebouncedValue(typed.trim(), 150);
  const [again, setAgain] = useState<ListedPaper | null>(null);
  const asked = paperKind.safeParse(params.get('kind'));
  const kind = asked.success ? asked.data : null;
  return (
    <Page title="Papers">
      <div className={classes.filters}>
        <TextInput
          label="Order number"
          value={typed}
          maxLength={40}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <Select
          label="Kind"
          placeholder="All kinds"
          clearable
          data={paperKinds.map((value) => ({ value, label: paperChoices[value].label }))}
          value={kind}
          onChange={(next) => setParams(next === null ? {} : { kind: next }, { replace: true })}
        />
      </div>
      <PaperList
        key={`${kind ?? ''} ${orderNumber}`}
        kind={kind}
        orderNumber={orderNumber}
        onAgain={setAgain}
      />
      {again === null ? null : (
        <PaperDialog
          kind={again.kind}
          orderId={again.orderId}
          number={again.orderNumber ?? again.orderLine}
          aboutId={again.aboutId}
          again={again}
          onIssued={readPapersAgain}
          onClose={() => setAgain(null)}
        />
      )}
    </Page>
  );
}
