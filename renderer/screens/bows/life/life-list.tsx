import { Button, Select } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'wouter';
import { type LifeEvent, lifeKinds } from '../../../../shared/contract/bow-life.ts';
import { fullDay } from '../../../parts/days.ts';
import classes from './life.module.css';

type Kind = LifeEvent['kind'];

const kindWords: Record<Kind, string> = {
  weighing: 'Weighings',
  finding: 'Findings',
  geometry: 'Limbs measured',
  removal: 'Bites taken',
  glass: 'Glass',
  shipment: 'Parcels',
  incident: 'Incidents',
  marking: 'Markings',
  move: 'Came and left',
};

const everything = 'everything';
/** A long life is read a stretch at a time. */
const stretch = 50;

/** Everything that happened to the bow here, newest first. */
export function LifeList({ events }: { events: readonly LifeEvent[] }) {
  const [kind, setKind] = useState<string>(everything);
  const [shown, setShown] = useState(stretch);
  const chosen = events.filter((event) => kind === everything || event.kind === kind);
  const known = lifeKinds.filter((one) => events.some((event) => event.kind === one));
  return (
    <>
      <Select
        label="Show"
        maw={280}
        mb="sm"
        data={[
          { value: everything, label: 'Everything' },
          ...known.map((value) => ({ value, label: kindWords[value] })),
        ]}
        value={kind}
        onChange={(value) => {
          setKind(value ?? everything);
          setShown(stretch);
        }}
      />
      <ol className={classes.events} aria-label="What happened to this bow, newest first">
        {chosen.slice(0, shown).map((event) => (
          <Event key={`${event.kind} ${event.id}`} event={event} />
        ))}
      </ol>
      {chosen.length > shown ? (
        <Button variant="default" onClick={() => setShown(shown + stretch)}>
          Show older ({chosen.length - shown})
        </Button>
      ) : null}
    </>
  );
}

function Event({ event }: { event: LifeEvent }) {
  return (
    <li className={classes.event}>
      <span>{fullDay(event.on)}</span>
      <div>
        <strong className={event.struckReason === null ? undefined : classes.struck}>
          {event.title}
        </strong>
        {event.text === '' ? null : <p>{event.text}</p>}
        {event.struckReason === null ? null : (
          <p>Struck out, does not count: {event.struckReason}</p>
        )}
        <span className={classes.who}>
          {event.personName}
          {event.orderId === null ? null : (
            <>
              {', '}
              <Link href={`/orders/${event.orderId}`} className={classes.link ?? ''}>
                order {event.orderNumber}
              </Link>
            </>
          )}
        </span>
      </div>
    </li>
  );
}
