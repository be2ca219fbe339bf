import { Button } from '@mantine/core';
import dayjs from 'dayjs';
import { useState } from 'react';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { useWho } from '../../api/who.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { Mark } from '../../parts/mark.tsx';
import classes from './finish-room.module.css';

interface ClockNoteProps {
  /** What is wrong with the clock of the computer. */
  trouble: string;
  /** Milliseconds of the shop's clock. */
  nowMs: number;
}

/** The clock stands before the last record; the owner may say that it is right all the same. */
export function ClockNote({ trouble, nowMs }: ClockNoteProps) {
  const [isAsked, setAsked] = useState(false);
  const command = useCommand(api.clocks.confirm);
  const isOwner = useWho()?.role === 'owner';
  return (
    <div className={classes.stack}>
      <Mark kind="stop">{trouble}</Mark>
      {!isOwner || isAsked ? null : (
        <div className={classes.buttons}>
          <Button variant="default" onClick={() => setAsked(true)}>
            The clock is right ...
          </Button>
        </div>
      )}
      {isOwner && isAsked ? (
        <FormBox
          title="Is the clock right?"
          submitLabel="Yes, day and time are right"
          command={command}
          onCancel={() => setAsked(false)}
          onSubmit={() => void command.run({})}
        >
          <p className={classes.text}>
            The computer says it is <b>{dayjs(nowMs).format('dddd, D MMMM YYYY, HH:mm')}</b>. Look
            at another clock and a calendar. By this time pot life, recoat and cure are counted.
          </p>
        </FormBox>
      ) : null}
    </div>
  );
}
