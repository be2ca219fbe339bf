import { Button } from '@mantine/core';
import { useState } from 'react';
import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import orderClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { DaysForm } from './days-form.tsx';
import { holdLabels } from './hold-words.ts';
import classes from './holds.module.css';
import { LadderList } from './ladder-list.tsx';
import { RemindForm } from './remind-form.tsx';

type Form = 'remind' | 'days';

/** The hold an order stands on now, with its days. */
export function OpenHold({ hold }: { hold: HoldDetail }) {
  const { order, isOffice } = useOrder();
  const [form, setForm] = useState<Form | null>(null);
  const release = useOrderCommand(api.orders.release);
  const { id, rowVersion } = order.card;
  const close = () => setForm(null);
  return (
    <div className={classes.open}>
      <Mark kind="attention">{holdLabels[hold.kind]}</Mark>
      <p className={orderClasses.words}>{hold.reason}</p>
      <p className={classes.quiet}>Since {momentText(hold.since)}.</p>
      <LadderList hold={hold} />
      {form === 'remind' ? <RemindForm hold={hold} onDone={close} /> : null}
      {form === 'days' ? <DaysForm hold={hold} onDone={close} /> : null}
      <CommandError command={release} />
      {form === null ? (
        <div className={classes.buttons}>
          <Button
            variant="default"
            loading={release.busy}
            onClick={() => void release.run({ id, rowVersion })}
          >
            Release the hold
          </Button>
          {isOffice ? (
            <>
              <Button variant="default" onClick={() => setForm('remind')}>
                Record a reminder
              </Button>
              <Button variant="default" onClick={() => setForm('days')}>
                Change the days
              </Button>
            </>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
