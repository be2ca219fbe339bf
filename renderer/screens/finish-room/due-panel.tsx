import { Button } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'wouter';
import type { FinishRoom, RoomBow } from '../../../shared/contract/finish.ts';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { ChooseFinish } from './choose-finish.tsx';
import classes from './finish-room.module.css';
import { sourcesOf } from './spray-fields.ts';
import { SurfaceForm } from './surface-form.tsx';
import { byUrgency, coatsText, windowWords } from './window-words.ts';

function rackWords(room: FinishRoom): string {
  const { used, all } = room.slots;
  const rack = `Rack: ${Math.max(0, all - used)} of ${all} ${all === 1 ? 'place' : 'places'} left today.`;
  return sourcesOf(room).length > 0 ? rack : `${rack} Mix a batch before you coat.`;
}

function DueBow({ bow, room }: { bow: RoomBow; room: FinishRoom }) {
  const [isChoosing, setChoosing] = useState(false);
  const { orderId, number, customerName, bowLine, finishName, onHold, lastCoatAt } = bow;
  const { kind, text } = windowWords(bow);
  return (
    <li className={classes.item} aria-label={`${number} ${customerName}`}>
      <span className={classes.head}>
        <Link href={`/orders/${orderId}?open=finish`} className={classes.strong ?? ''}>
          {number}
        </Link>
        <span>{customerName}</span>
      </span>
      <span className={classes.quiet}>{bowLine}</span>
      <Mark kind={kind}>{text}</Mark>
      {onHold ? <Mark kind="attention">On hold</Mark> : null}
      {bow.finishSystemId === null ? null : (
        <span>
          {finishName}, {coatsText(bow)}
          {lastCoatAt === null ? '' : `, the last one ${momentText(lastCoatAt)}`}
        </span>
      )}
      {bow.window?.doubts.map((doubt) => (
        <span key={doubt} className={classes.quiet}>
          {doubt}
        </span>
      ))}
      {bow.finishSystemId !== null ? null : isChoosing ? (
        <ChooseFinish
          orderId={orderId}
          number={number}
          systems={room.systems.filter(({ active }) => active)}
          chosen={null}
          onClose={() => setChoosing(false)}
        />
      ) : (
        <div className={classes.buttons}>
          <Button
            variant="default"
            onClick={() => setChoosing(true)}
            aria-label={`Choose the finish of ${number}`}
          >
            Choose the finish
          </Button>
        </div>
      )}
    </li>
  );
}

interface DuePanelProps {
  room: FinishRoom;
  /** Nothing while bows are being coated. */
  onCoat: (() => void) | undefined;
}

/** Bows that wait for a coat, the one whose window shuts soonest first. */
export function DuePanel({ room, onCoat }: DuePanelProps) {
  const [isReading, setReading] = useState(false);
  const due = byUrgency(room.bows.filter(({ stage }) => stage === 'finish'));
  const coated = due.filter(({ coatsOn }) => coatsOn > 0);
  return (
    <Panel
      title="Coats due"
      actions={
        <div className={classes.buttons}>
          {isReading || coated.length === 0 ? null : (
            <Button variant="default" onClick={() => setReading(true)}>
              Read the surface
            </Button>
          )}
          {onCoat === undefined || due.length === 0 || room.systems.length === 0 ? null : (
            <Button onClick={onCoat}>Coat bows</Button>
          )}
        </div>
      }
    >
      <div className={classes.stack}>
        <p className={classes.text}>{rackWords(room)}</p>
        {isReading ? <SurfaceForm bows={coated} onClose={() => setReading(false)} /> : null}
        {due.length === 0 ? (
          <EmptyNote title="No bow waits for a coat">
            Move a sanded bow to Finish on the board.
          </EmptyNote>
        ) : (
          <ul className={classes.list}>
            {due.map((bow) => (
              <DueBow key={bow.orderId} bow={bow} room={room} />
            ))}
          </ul>
        )}
      </div>
    </Panel>
  );
}
