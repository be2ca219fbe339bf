import { Button } from '@mantine/core';
import { useState } from 'react';
import type { PriceLine } from '../../../../shared/contract/prices.ts';
import { dollarText } from '../../../../shared/money.ts';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { Mark } from '../../../parts/mark.tsx';
import pageClasses from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { draftOf } from './line-fields.ts';
import { LineForm } from './line-form.tsx';
import classes from './price.module.css';
import { lineWords, movedBy } from './price-words.ts';

function ChangeForm({ line, onClose }: { line: PriceLine; onClose: () => void }) {
  const command = useOrderCommand(api.prices.editLine, onClose);
  const { id, rowVersion } = line;
  return (
    <LineForm
      title={`Change ${line.what}`}
      submitLabel="Save"
      initial={draftOf(line)}
      command={command}
      onCancel={onClose}
      onSubmit={(fields) => void command.run({ id, rowVersion, ...fields })}
    />
  );
}

function LineButtons({ line, onChange }: { line: PriceLine; onChange: () => void }) {
  const { order } = useOrder();
  const remove = useOrderCommand(api.prices.removeLine);
  const arrange = useOrderCommand(api.prices.arrangeLines);
  const ids = order.price.lines.map(({ id }) => id);
  const at = ids.indexOf(line.id);
  const move = (by: -1 | 1) =>
    void arrange.run({
      orderId: order.card.id,
      rowVersion: order.card.rowVersion,
      ids: movedBy(ids, line.id, by),
    });
  return (
    <>
      <div className={classes.small}>
        <Button variant="subtle" px={8} aria-label={`Change ${line.what}`} onClick={onChange}>
          Change
        </Button>
        <Button
          variant="subtle"
          px={8}
          loading={remove.busy}
          aria-label={`Remove ${line.what}`}
          onClick={() => void remove.run({ id: line.id, rowVersion: line.rowVersion })}
        >
          Remove
        </Button>
        <Button
          variant="subtle"
          px={8}
          disabled={at === 0 || arrange.busy}
          aria-label={`Move ${line.what} up`}
          onClick={() => move(-1)}
        >
          Up
        </Button>
        <Button
          variant="subtle"
          px={8}
          disabled={at === ids.length - 1 || arrange.busy}
          aria-label={`Move ${line.what} down`}
          onClick={() => move(1)}
        >
          Down
        </Button>
      </div>
      <CommandError command={remove} />
      <CommandError command={arrange} />
    </>
  );
}

/** One line; its form opens over the whole width. */
function LineRow({ line }: { line: PriceLine }) {
  const { order, isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  if (isOpen) {
    return (
      <tr>
        <td colSpan={2}>
          <ChangeForm line={line} onClose={() => setOpen(false)} />
        </td>
      </tr>
    );
  }
  const words = lineWords(line, (order.price.taxRatePpm ?? 0) > 0);
  const isUnpriced = line.priceServiceId !== null && line.unitCents === 0;
  return (
    <tr>
      <td>
        {line.what}
        {words === '' ? null : <p className={pageClasses.quiet}>{words}</p>}
        {isUnpriced ? (
          <div>
            <Mark kind="attention">No price set yet</Mark>
          </div>
        ) : null}
        {isOffice ? <LineButtons line={line} onChange={() => setOpen(true)} /> : null}
      </td>
      <td className={classes.amount}>{dollarText(line.cents)}</td>
    </tr>
  );
}

/** The lines the price is made up of, as the customer reads them. */
export function PriceLines() {
  const { lines } = useOrder().order.price;
  if (lines.length === 0) return null;
  return (
    <table className={classes.lines} aria-label="Lines of the price">
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className={classes.amount}>
            Amount
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <LineRow key={line.id} line={line} />
        ))}
      </tbody>
    </table>
  );
}
