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
import { LineMenu, useLineCommands } from './line-menu.tsx';
import classes from './price.module.css';
import { lineWords } from './price-words.ts';

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

/** One line; its form opens over the whole width. */
function LineRow({ line }: { line: PriceLine }) {
  const { order, isOffice } = useOrder();
  const [isOpen, setOpen] = useState(false);
  const commands = useLineCommands(line);
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
        <CommandError command={commands.remove} />
        <CommandError command={commands.arrange} />
      </td>
      <td className={classes.amount}>
        {dollarText(line.cents)}
        {isOffice ? (
          <div className={classes.menu}>
            <LineMenu what={line.what} commands={commands} onChange={() => setOpen(true)} />
          </div>
        ) : null}
      </td>
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
