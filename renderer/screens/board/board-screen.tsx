import { Button } from '@mantine/core';
import { useSessionStorage } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { BoardColumns } from './board-columns.tsx';
import { BoardFilters } from './board-filters.tsx';
import { type BoardFilter, everything, fits, hides } from './filter.ts';
import { MoveDialogs } from './move-dialogs.tsx';
import { useMoves } from './use-moves.ts';

/** Work by stage: what stands where, what holds it, and the way to move it on. */
export function BoardScreen() {
  const who = useWho();
  const [filter, setFilter] = useSessionStorage<BoardFilter>({
    key: 'tillermark-board-filter',
    defaultValue: everything,
    getInitialValueInEffect: false,
  });
  const board = useQuery({
    ...orpc.orders.board.queryOptions({ input: { includeClosed: filter.closed } }),
    placeholderData: keepPreviousData,
  });
  const moves = useMoves();
  const cards = board.data ?? [];
  const { moving } = moves;
  const placed = cards.map((card) =>
    moving !== null && card.id === moving.card.id ? { ...card, stage: moving.to } : card,
  );
  return (
    <Page
      title="Board"
      fill
      actions={
        who?.role === 'bench' ? null : (
          <Button component={Link} href="/intake">
            Take in a request
          </Button>
        )
      }
    >
      {board.error === null ? null : (
        <ErrorNote error={board.error} onAgain={() => void board.refetch()} />
      )}
      {board.data === undefined && board.error === null ? <BusyNote /> : null}
      {board.data === undefined ? null : (
        <Body
          cards={placed}
          filter={filter}
          onFilter={setFilter}
          onMove={(id, to) => {
            const card = cards.find((one) => one.id === id);
            if (card !== undefined) moves.start({ card, to });
          }}
        />
      )}
      <MoveDialogs moves={moves} cards={cards} isOwner={who?.role === 'owner'} />
    </Page>
  );
}

interface BodyProps {
  cards: OrderCard[];
  filter: BoardFilter;
  onFilter: (filter: BoardFilter) => void;
  onMove: (id: string, to: OrderCard['stage']) => void;
}

function Body({ cards, filter, onFilter, onMove }: BodyProps) {
  const shown = cards.filter((card) => fits(card, filter));
  if (cards.length === 0 && !filter.closed) {
    return (
      <EmptyNote title="No orders in work">
        <p>
          <Link href="/intake">Take in a request</Link>: a call, a letter, or a box on the table.
        </p>
        <Button variant="subtle" onClick={() => onFilter({ ...everything, closed: true })}>
          Show orders that left in the last two weeks
        </Button>
      </EmptyNote>
    );
  }
  return (
    <>
      <BoardFilters filter={filter} onChange={onFilter} />
      {shown.length === 0 ? (
        <EmptyNote title="No card fits the filter">
          <Button variant="default" onClick={() => onFilter(everything)}>
            {hides(filter) ? 'Clear the filter' : 'Back to orders in work'}
          </Button>
        </EmptyNote>
      ) : (
        <BoardColumns cards={cards} shown={shown} filter={filter} onMove={onMove} />
      )}
    </>
  );
}
