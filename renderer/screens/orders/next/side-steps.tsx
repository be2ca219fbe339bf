import { Button } from '@mantine/core';
import { useState } from 'react';
import { useOrder } from '../order-screen.tsx';
import { type SideStep, sideStepsOf } from './homeward.ts';
import classes from './next-step.module.css';
import { CancelDialog, TakeUpDialog } from './reason-dialog.tsx';
import { SendHomeDialog } from './send-home-dialog.tsx';

const words: Record<SideStep, string> = {
  'send-home': 'Send it home ...',
  cancel: 'Cancel the request ...',
  'take-up': 'Take it up again ...',
};

const dialogs = { 'send-home': SendHomeDialog, cancel: CancelDialog, 'take-up': TakeUpDialog };

/** Ways off the route, kept quiet: home with the work not done, or back to it. */
export function SideSteps() {
  const { order, isOffice } = useOrder();
  const [asking, setAsking] = useState<SideStep | null>(null);
  const Dialog = asking === null ? null : dialogs[asking];
  return (
    <div className={classes.quietActions}>
      {sideStepsOf(order.card, isOffice).map((step) => (
        <Button
          key={step}
          variant="subtle"
          color="gray"
          c="dimmed"
          px={0}
          onClick={() => setAsking(step)}
        >
          {words[step]}
        </Button>
      ))}
      {Dialog === null ? null : <Dialog onDone={() => setAsking(null)} />}
    </div>
  );
}
