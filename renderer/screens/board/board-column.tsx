import { Draggable, type DraggableProvidedDragHandleProps, Droppable } from '@hello-pangea/dnd';
import { Button } from '@mantine/core';
import { useState } from 'react';
import type { OrderCard as Card } from '../../../shared/contract/order-card.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import classes from './board.module.css';
import type { BoardColumn as Column } from './columns.ts';
import cardClasses from './order-card.module.css';
import { OrderCard } from './order-card.tsx';

const atFirst = 40;

interface BoardColumnProps {
  column: Column;
  /** The card in the hand may not go here: the stage is not on its route. */
  shut: boolean;
  onMove: (card: Card, to: Stage) => void;
}

/** One stage. Long columns show their first cards and the rest on request. */
export function BoardColumn({ column: { stage, cards }, shut, onMove }: BoardColumnProps) {
  const [limit, setLimit] = useState(atFirst);
  const hidden = cards.length - limit;
  const name = stageLabels[stage];
  return (
    <section
      className={`${classes.column} ${cards.length === 0 ? classes.empty : ''} ${shut ? classes.closedToIt : ''}`}
      aria-label={`${name}, ${cards.length} ${cards.length === 1 ? 'order' : 'orders'}`}
    >
      <h2 className={classes.columnHead}>
        {name} <span className={classes.count}>{cards.length}</span>
      </h2>
      <Droppable droppableId={stage} isDropDisabled={shut}>
        {(drop, { isDraggingOver }) => (
          <div
            ref={drop.innerRef}
            {...drop.droppableProps}
            className={`${classes.list} ${isDraggingOver ? classes.over : ''}`}
          >
            {cards.slice(0, limit).map((card, index) => (
              <CardSlot key={card.id} card={card} index={index} onMove={onMove} />
            ))}
            {drop.placeholder}
            {hidden > 0 ? (
              <Button fullWidth variant="default" onClick={() => setLimit(cards.length)}>
                Show {hidden} more
              </Button>
            ) : null}
          </div>
        )}
      </Droppable>
    </section>
  );
}

interface CardSlotProps {
  card: Card;
  index: number;
  onMove: (card: Card, to: Stage) => void;
}

function CardSlot({ card, index, onMove }: CardSlotProps) {
  return (
    <Draggable draggableId={card.id} index={index}>
      {(drag, { isDragging }) => (
        <article
          ref={drag.innerRef}
          {...drag.draggableProps}
          {...byMouseOnly(drag.dragHandleProps)}
          className={classes.slot}
          aria-label={`Order ${card.number}, ${card.customerName}`}
        >
          <div className={`${cardClasses.card} ${isDragging ? cardClasses.dragging : ''}`}>
            <OrderCard card={card} onMove={(to) => onMove(card, to)} />
          </div>
        </article>
      )}
    </Draggable>
  );
}

/** A card holds a link and a menu, so it can be no button itself; its menu is the way by keyboard. */
function byMouseOnly(handle: DraggableProvidedDragHandleProps | null) {
  return { ...handle, role: undefined, tabIndex: -1, 'aria-describedby': undefined };
}
