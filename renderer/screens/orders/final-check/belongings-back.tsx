import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { Belonging } from '../../../../shared/contract/arrival.ts';
import { closedStages } from '../../../../shared/stages.ts';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import classes from './final-check.module.css';

/** Not in the box yet. Words are for what goes back changed, or stays here as agreed. */
function TickBack({ belonging: { id, rowVersion, what } }: { belonging: Belonging }) {
  const [note, setNote] = useState<string | null>(null);
  const command = useOrderCommand(api.arrival.tickBack);
  return (
    <>
      <div className={classes.buttons}>
        <Button
          h={56}
          size="md"
          variant="default"
          loading={command.busy}
          aria-label={`Back in the box: ${what}`}
          onClick={() => void command.run({ id, rowVersion, note: note ?? '' })}
        >
          Back in the box
        </Button>
        {note === null ? (
          <Button variant="subtle" aria-label={`Add words: ${what}`} onClick={() => setNote('')}>
            Add words
          </Button>
        ) : null}
      </div>
      {note === null ? null : (
        <TextInput
          label="Words"
          description="For example: old string kept here, as agreed with the owner."
          maxLength={1000}
          autoComplete="off"
          value={note}
          error={command.details.note}
          onChange={(event) => setNote(event.currentTarget.value)}
        />
      )}
      <CommandError command={command} />
    </>
  );
}

function Untick({ belonging: { id, rowVersion, what } }: { belonging: Belonging }) {
  const command = useOrderCommand(api.arrival.untick);
  return (
    <>
      <Button
        variant="subtle"
        loading={command.busy}
        aria-label={`Not in the box after all: ${what}`}
        onClick={() => void command.run({ id, rowVersion })}
      >
        Not in the box after all
      </Button>
      <CommandError command={command} />
    </>
  );
}

function BackLine({ belonging, mayTick }: { belonging: Belonging; mayTick: boolean }) {
  const { what, backAt, backBy, backNote } = belonging;
  return (
    <li className={classes.row}>
      <span className={orderClasses.words}>{what}</span>
      {backAt === null ? (
        mayTick ? (
          <TickBack belonging={belonging} />
        ) : (
          <Mark kind="attention">Not ticked</Mark>
        )
      ) : (
        <div className={classes.buttons}>
          <Mark kind="done">
            Back in the box, {momentText(backAt)}
            {backBy === null ? '' : `, ${backBy}`}
          </Mark>
          {mayTick ? <Untick belonging={belonging} /> : null}
        </div>
      )}
      {backNote === '' ? null : <p className={orderClasses.words}>{backNote}</p>}
    </li>
  );
}

/** What came along goes back with the bow, ticked one by one against the list of the unpacking table. */
export function BelongingsBack() {
  const { order } = useOrder();
  const { belongings, arrival, card } = order;
  const none = arrival?.nothingCameAlong === true ? 'Nothing came along.' : 'Nothing is listed.';
  const mayTick = !closedStages.includes(card.stage);
  return (
    <>
      <h3 className={classes.part}>Belongings back in the box</h3>
      {belongings.length === 0 ? <p className={orderClasses.quiet}>{none}</p> : null}
      <ul className={classes.list} aria-label="Belongings">
        {belongings.map((belonging) => (
          <BackLine key={belonging.id} belonging={belonging} mayTick={mayTick} />
        ))}
      </ul>
    </>
  );
}
