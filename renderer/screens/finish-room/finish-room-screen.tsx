import { usePrefetchQuery, useQuery } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import type { FinishRoom } from '../../../shared/contract/finish.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { useSecond } from '../../parts/use-second.ts';
import { AirPanel } from './air-panel.tsx';
import { BatchesPanel } from './batches-panel.tsx';
import { ClockNote } from './clock-note.tsx';
import { CurePanel } from './cure-panel.tsx';
import { DuePanel } from './due-panel.tsx';
import classes from './finish-room.module.css';
import { usualSystem } from './mix-fields.ts';
import { RoomSize } from './room-size.tsx';
import { SandingPanel } from './sanding-panel.tsx';
import { type Work, WorkForm } from './work-form.tsx';

/** Windows open and shut by time alone: the room is read again that often. */
const readAgainMs = 30_000;

interface RoomProps {
  room: FinishRoom;
  grits: readonly SizedGrit[];
  nowMs: number;
}

function NoFinishYet() {
  return (
    <EmptyNote title="The shop has no finish yet">
      Copy the data sheet of a finish you use under{' '}
      <Link href="/settings?tab=finishes">Settings, Finishes</Link>. Then mix it here.
    </EmptyNote>
  );
}

/** Where what was just said stands, for who works by keyboard. */
function toTheTop(): void {
  document.querySelector<HTMLElement>('h1')?.focus();
}

function Room({ room, grits, nowMs }: RoomProps) {
  const [work, setWork] = useState<Work | null>(null);
  const [times, setTimes] = useState(0);
  const [said, setSaid] = useState<ReactNode>(null);
  const usualId = usualSystem(room);
  const begin = (next: Work) => {
    setSaid(null);
    setTimes(times + 1);
    setWork(next);
  };
  const end = (words: ReactNode) => {
    setSaid(words);
    setWork(null);
    toTheTop();
  };
  const unless = (kind: Work['kind'], next: Work) =>
    work?.kind === kind ? undefined : () => begin(next);
  return (
    <div className={classes.stack}>
      {room.clockTrouble === null ? null : <ClockNote trouble={room.clockTrouble} nowMs={nowMs} />}
      {room.systems.length === 0 ? <NoFinishYet /> : null}
      <div role="status" className={classes.said}>
        {said}
      </div>
      {work === null ? null : (
        <WorkForm
          key={times}
          work={work}
          room={room}
          grits={grits}
          nowMs={nowMs}
          usualId={usualId}
          onDone={end}
          onClose={() => end(null)}
        />
      )}
      <div className={classes.columns}>
        <div className={classes.column}>
          <AirPanel room={room} usualId={usualId} />
          <BatchesPanel
            room={room}
            nowMs={nowMs}
            onMix={unless('mix', { kind: 'mix' })}
            onCoat={(batchId) => begin({ kind: 'coat', batchId })}
          />
        </div>
        <div className={classes.column}>
          <DuePanel room={room} onCoat={unless('coat', { kind: 'coat', batchId: null })} />
          <CurePanel room={room} nowMs={nowMs} />
          <SandingPanel
            bows={room.bows.filter(({ stage }) => stage !== 'cure')}
            onSand={unless('sand', { kind: 'sand' })}
          />
        </div>
      </div>
    </div>
  );
}

/** Air, batches, coats and cure, for whoever stands in the finish room with gloves on. */
export function FinishRoomScreen() {
  const room = useQuery({ ...orpc.finish.room.queryOptions(), refetchInterval: readAgainMs });
  const grits = useQuery(orpc.stores.grits.queryOptions());
  // The sanding form offers the grits of the stores: it opens with them, not before them.
  usePrefetchQuery(orpc.stores.list.queryOptions());
  const here = useSecond();
  const error = room.error ?? grits.error;
  const again = () => {
    for (const query of [room, grits]) void query.refetch();
  };
  const isRead = room.data !== undefined && grits.data !== undefined;
  return (
    <Page title="Finish room">
      <RoomSize>
        {error === null ? null : <ErrorNote error={error} onAgain={again} />}
        {isRead || error !== null ? null : <BusyNote />}
        {isRead ? (
          <Room
            room={room.data}
            grits={grits.data}
            nowMs={here + Date.parse(room.data.now) - room.dataUpdatedAt}
          />
        ) : null}
      </RoomSize>
    </Page>
  );
}
