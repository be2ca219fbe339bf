import { Button, Menu } from '@mantine/core';
import { IconChevronDown } from '@tabler/icons-react';
import type { PriceLine } from '../../../../shared/contract/prices.ts';
import { api } from '../../../api/client.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { movedBy } from './price-words.ts';

/** Takes a line away, or moves it up or down among the others. */
export function useLineCommands(line: PriceLine) {
  const { order } = useOrder();
  const remove = useOrderCommand(api.prices.removeLine);
  const arrange = useOrderCommand(api.prices.arrangeLines);
  const ids = order.price.lines.map(({ id }) => id);
  const { id: orderId, rowVersion } = order.card;
  return {
    remove,
    arrange,
    isFirst: ids[0] === line.id,
    isLast: ids.at(-1) === line.id,
    takeAway: () => void remove.run({ id: line.id, rowVersion: line.rowVersion }),
    move: (by: -1 | 1) => void arrange.run({ orderId, rowVersion, ids: movedBy(ids, line.id, by) }),
  };
}

interface LineMenuProps {
  what: string;
  commands: ReturnType<typeof useLineCommands>;
  onChange: () => void;
}

/** What may be done with a line, behind one button: a price of many lines stays short. */
export function LineMenu({ what, commands, onChange }: LineMenuProps) {
  const { remove, arrange, isFirst, isLast, takeAway, move } = commands;
  return (
    <Menu position="bottom-end">
      <Menu.Target>
        <Button
          variant="subtle"
          px={8}
          loading={remove.busy || arrange.busy}
          aria-label={`Edit ${what}`}
          rightSection={<IconChevronDown size={18} aria-hidden="true" />}
        >
          Edit
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Item mih={44} onClick={onChange}>
          Change the line
        </Menu.Item>
        <Menu.Item mih={44} onClick={takeAway}>
          Remove it
        </Menu.Item>
        <Menu.Item mih={44} disabled={isFirst} onClick={() => move(-1)}>
          Move it up
        </Menu.Item>
        <Menu.Item mih={44} disabled={isLast} onClick={() => move(1)}>
          Move it down
        </Menu.Item>
      </Menu.Dropdown>
    </Menu>
  );
}
