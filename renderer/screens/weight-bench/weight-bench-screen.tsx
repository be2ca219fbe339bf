import { Button, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { stageLabels } from '../../../shared/stages.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { Panel } from '../../parts/panel.tsx';
import { TwoColumns } from '../../parts/two-columns.tsx';
import { weightsLine } from '../../parts/weights-line.ts';
import { bowTitle, markedText } from '../bows/bow-text.ts';
import { ordersToPlan } from './choose.ts';
import classes from './weight-bench.module.css';

interface ChoiceProps {
  href: string;
  number: string;
  who: string;
  line: string;
  /** Weights of the job; a weight stays on one line with its draw. */
  weights?: string;
  aside: string;
}

function Choice({ href, number, who, line, weights = '', aside }: ChoiceProps) {
  return (
    <li>
      <Link href={href} className={classes.choice ?? ''}>
        <span className={classes.number}>{number}</span>
        <span className={classes.who}>
          {who}
          <span className={classes.line}>{line}</span>
          {weights === '' ? null : <span className={classes.weights}>{weights}</span>}
        </span>
        <span className={classes.aside}>{aside}</span>
      </Link>
    </li>
  );
}

function Orders() {
  const board = useQuery(orpc.orders.board.queryOptions({ input: { includeClosed: false } }));
  if (board.data === undefined) {
    return board.error === null ? (
      <BusyNote />
    ) : (
      <ErrorNote error={board.error} onAgain={() => void board.refetch()} busy={board.isFetching} />
    );
  }
  const orders = ordersToPlan(board.data);
  if (orders.length === 0) {
    return (
      <EmptyNote title="No bow is here to have its weight lowered.">
        An order with weight reduction shows here from the day its bow has arrived.
      </EmptyNote>
    );
  }
  return (
    <ul className={classes.list}>
      {orders.map(({ id, number, customerName, bowLine, stage, weights }) => (
        <Choice
          key={id}
          href={`/weight-bench/order/${id}`}
          number={number}
          who={customerName || "The shop's own bow"}
          line={bowLine}
          weights={weightsLine(weights)}
          aside={stageLabels[stage]}
        />
      ))}
    </ul>
  );
}

function Bows() {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed.trim(), 120);
  const results = useQuery({
    ...orpc.bows.search.queryOptions({ input: { text } }),
    enabled: text !== '',
    placeholderData: keepPreviousData,
  });
  const found = text === '' ? [] : (results.data ?? []);
  return (
    <>
      <TextInput
        label="Find a bow"
        description="Maker, model, serial or owner. Nothing is recorded by a what-if."
        leftSection={<IconSearch size={20} aria-hidden="true" />}
        value={typed}
        maxLength={200}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      {results.error === null ? null : (
        <ErrorNote error={results.error} onAgain={() => void results.refetch()} />
      )}
      {text !== '' && results.data?.length === 0 ? <p>No bow fits.</p> : null}
      <ul className={classes.list}>
        {found.slice(0, 12).map((bow) => (
          <Choice
            key={bow.id}
            href={`/weight-bench/bow/${bow.id}`}
            number=""
            who={bowTitle(bow)}
            line={markedText(bow)}
            aside={bow.customerId === null ? "the shop's own" : bow.ownerName}
          />
        ))}
      </ul>
    </>
  );
}

/** Where planning begins: an order in work, a bow the shop knows, or no record at all. */
export function WeightBenchScreen() {
  return (
    <Page
      title="Weight bench"
      actions={
        <Button component={Link} href="/weight-bench/what-if" variant="default">
          What-if without a bow
        </Button>
      }
    >
      <TwoColumns
        left={
          <Panel title="Orders in work">
            <Orders />
          </Panel>
        }
        right={
          <Panel title="What-if on a bow">
            <Bows />
          </Panel>
        }
      />
    </Page>
  );
}
