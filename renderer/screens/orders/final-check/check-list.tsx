import { Button } from '@mantine/core';
import { useEffect, useState } from 'react';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { today } from '../../../parts/days.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { checkErrors, checksFrom, type Ticked } from './check-fields.ts';
import { CheckRow } from './check-row.tsx';
import classes from './final-check.module.css';

/** All rows of the checklist; everything ticked is recorded with one button. */
export function CheckList({ mayTick }: { mayTick: boolean }) {
  const { order, opened } = useOrder();
  const rows = order.finalCheck;
  const [fields, setFields] = useState<Ticked>({});
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.finalCheck.record, () => {
    setFields({});
    setTried(false);
  });
  const opening = opened['final-check'];
  // biome-ignore lint/correctness/useExhaustiveDependencies: each asking brings its row into view.
  useEffect(() => {
    if (opening === undefined || opening.opens === null) return;
    const row = document.getElementById(`order-${opening.opens}`);
    const frame = requestAnimationFrame(() => row?.scrollIntoView({ block: 'center' }));
    return () => cancelAnimationFrame(frame);
  }, [opening?.times]);
  const checks = checksFrom(fields, rows);
  const errors = isTried ? checkErrors(fields, rows) : {};
  return (
    <form
      aria-label="Final check"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const form = event.currentTarget;
        setTried(true);
        if (checks.length > 0 && Object.keys(checkErrors(fields, rows)).length === 0) {
          void command.run({ orderId: order.card.id, doneOn: today(), checks });
        } else {
          requestAnimationFrame(() =>
            form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(),
          );
        }
      }}
    >
      <ul className={classes.list}>
        {rows.map((row) => (
          <CheckRow
            key={row.item}
            row={row}
            value={fields[row.item]}
            errors={errors}
            refused={command.details[row.item]}
            mayTick={mayTick}
            onChange={(value) => {
              const { [row.item]: _, ...rest } = fields;
              setFields(value === undefined ? rest : { ...rest, [row.item]: value });
            }}
          />
        ))}
      </ul>
      {mayTick ? (
        <div className={classes.bar}>
          <CommandError command={command} />
          <Button
            type="submit"
            h={56}
            size="md"
            loading={command.busy}
            disabled={checks.length === 0}
          >
            {checks.length === 0
              ? 'Tick what you have looked at'
              : checks.length === 1
                ? 'Record 1 check'
                : `Record ${checks.length} checks`}
          </Button>
        </div>
      ) : null}
    </form>
  );
}
