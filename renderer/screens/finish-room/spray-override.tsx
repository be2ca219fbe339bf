import { Button } from '@mantine/core';
import { useState } from 'react';
import type { SessionLook } from '../../../shared/contract/finish.ts';
import { useWho } from '../../api/who.ts';
import { ReasonForm } from '../../parts/reason-form.tsx';
import classes from './finish-room.module.css';
import { mayBeLetPass } from './spray-errors.ts';

interface SprayOverrideProps {
  against: Pick<SessionLook, 'session' | 'orders'>;
  command: Parameters<typeof ReasonForm>[0]['command'];
  onPass: (reason: string) => void;
}

/** The owner's way past what stands against a session, where there is one. */
export function SprayOverride({ against, command, onPass }: SprayOverrideProps) {
  const [isPassing, setPassing] = useState(false);
  const isOwner = useWho()?.role === 'owner';
  if (!isOwner || !mayBeLetPass(against.session, against.orders)) return null;
  if (!isPassing) {
    return (
      <div className={classes.buttons}>
        <Button variant="default" onClick={() => setPassing(true)}>
          Coat all the same ...
        </Button>
      </div>
    );
  }
  return (
    <ReasonForm
      title="Coat all the same"
      label="Why may it go on?"
      submitLabel="Record the coat all the same"
      command={command}
      onCancel={() => setPassing(false)}
      onSubmit={onPass}
    />
  );
}
