import { Button } from '@mantine/core';
import dayjs from 'dayjs';
import { restHours } from '../../../shared/arrival.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { momentText } from '../../parts/days.ts';
import { TableStep } from './part.tsx';
import { minutesText, restAt } from './rest-clock.ts';
import classes from './unpacking.module.css';
import { useArrivalPart } from './use-arrival-part.ts';
import { useMinute } from './use-minute.ts';

/** Out of the box since when, and how long the bow still rests before its first stringing. */
export function RestStep() {
  const part = useArrivalPart();
  const now = useMinute();
  const since = part.value.restingSince;
  const start = () => part.saveWith({ restingSince: new Date().toISOString() });
  return (
    <TableStep title="3  Let it rest" isDone={since !== null && restAt(since, now).isRested}>
      <p className={classes.quiet}>
        About {restHours} hours at shop temperature before the first stringing; longer from a
        freezing van (common practice).
      </p>
      {since === null ? null : <Clock since={since} now={now} />}
      <CommandError command={part.command} />
      <div className={classes.buttons}>
        <Button
          h={56}
          size="md"
          variant={since === null ? 'filled' : 'default'}
          loading={part.command.busy}
          onClick={start}
        >
          {since === null ? 'Out of the box now' : 'Start the clock again'}
        </Button>
      </div>
    </TableStep>
  );
}

function Clock({ since, now }: { since: string; now: number }) {
  const rest = restAt(since, now);
  return (
    <div>
      <p className={classes.clock}>
        {rest.isRested ? 'Rested' : `${minutesText(rest.minutesLeft)} to go`}
      </p>
      <p className={classes.text}>
        Out of the box since {momentText(since)}
        {rest.isRested ? '.' : `, until ${dayjs(rest.until).format('HH:mm')}.`}
      </p>
    </div>
  );
}
