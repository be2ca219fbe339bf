import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { usualBelongings } from '../../../shared/arrival.ts';
import { api } from '../../api/client.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { Mark } from '../../parts/mark.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { useOrderCommand } from '../orders/use-order-command.ts';
import { thingsFrom } from './arrival-fields.ts';
import { BelongingLine } from './belonging-line.tsx';
import { TableStep } from './part.tsx';
import classes from './unpacking.module.css';
import { useReportUnsaved } from './unsaved.tsx';
import { useArrivalPart } from './use-arrival-part.ts';

const title = '2  What came along';

/** One tap for what usually comes along, own words for the rest; all of it goes back with the bow. */
export function BelongingsStep() {
  const { order } = useOrder();
  const { belongings, card } = order;
  const [words, setWords] = useState('');
  const none = useArrivalPart();
  const add = useOrderCommand(api.arrival.addBelongings);
  const list = async (what: string[], typed: string) => {
    const added = await add.run({ orderId: card.id, what });
    // Only what was sent leaves the field: somebody may have typed on.
    if (added !== undefined) setWords((now) => (now === typed ? '' : now));
  };
  const things = thingsFrom(words);
  useReportUnsaved(title, words.trim() !== '');
  const { nothingCameAlong } = none.value;
  return (
    <TableStep
      title={title}
      isDone={order.belongings.length > 0 || order.arrival?.nothingCameAlong === true}
    >
      <p className={classes.quiet}>All of it is ticked back into the box when the bow goes home.</p>
      <ul className={classes.list} aria-label="Came along">
        {belongings.map((belonging) => (
          <BelongingLine key={belonging.id} belonging={belonging} />
        ))}
      </ul>
      {nothingCameAlong ? <Mark kind="done">Nothing came along</Mark> : null}
      <fieldset className={`${classes.buttons} ${classes.group}`} aria-label="One tap each">
        {usualBelongings.map((thing) => (
          <Button
            key={thing}
            h={56}
            size="md"
            variant="default"
            disabled={add.busy}
            onClick={() => void list([thing], '')}
          >
            {thing}
          </Button>
        ))}
        {belongings.length > 0 ? null : (
          <Button
            h={56}
            size="md"
            variant="default"
            loading={none.command.busy}
            onClick={() => none.saveWith({ nothingCameAlong: !nothingCameAlong })}
          >
            {nothingCameAlong ? 'Something did come along' : 'Nothing came along'}
          </Button>
        )}
      </fieldset>
      <form
        className={classes.step}
        aria-label="Something else that came along"
        onSubmit={(event) => {
          event.preventDefault();
          if (things.length > 0) void list(things, words);
        }}
      >
        <TextInput
          label="Something else"
          description="Several at once with commas between them."
          maxLength={1000}
          autoComplete="off"
          value={words}
          onChange={(event) => setWords(event.currentTarget.value)}
        />
        <div className={classes.buttons}>
          <Button type="submit" h={56} size="md" variant="default" loading={add.busy}>
            Add to the list
          </Button>
        </div>
      </form>
      <CommandError command={add} />
      <CommandError command={none.command} />
    </TableStep>
  );
}
