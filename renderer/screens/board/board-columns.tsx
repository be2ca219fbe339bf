import { DragDropContext } from '@hello-pangea/dnd';
import { useState } from 'react';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { type Stage, stage as stageSchema } from '../../../shared/stages.ts';
import classes from './board.module.css';
import { BoardColumn } from './board-column.tsx';
import { columnsOf } from './columns.ts';
import type { BoardFilter } from './filter.ts';

interface BoardColumnsProps {
  cards: OrderCard[];
  shown: OrderCard[];
  filter: BoardFilter;
  onMove: (id: string, to: Stage) => void;
}

export function BoardColumns({ cards, shown, filter, onMove }: BoardColumnsProps) {
  const [inHand, setInHand] = useState<OrderCard | null>(null);
  return (
    <DragDropContext
      onDragStart={({ draggableId }) =>
        setInHand(cards.find(({ id }) => id === draggableId) ?? null)
      }
      onDragEnd={({ draggableId, destination }) => {
        setInHand(null);
        const to = stageSchema.safeParse(destination?.droppableId);
        if (to.success) onMove(draggableId, to.data);
      }}
    >
      <div className={classes.board}>
        {columnsOf(cards, shown, filter).map((column) => (
          <BoardColumn
            key={column.stage}
            column={column}
            shut={inHand !== null && !inHand.route.includes(column.stage)}
            onMove={(card, to) => onMove(card.id, to)}
          />
        ))}
      </div>
    </DragDropContext>
  );
}
