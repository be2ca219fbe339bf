import { Button, Menu } from '@mantine/core';
import { IconChevronDown } from '@tabler/icons-react';
import { type Stage, stageLabels } from '../../../../shared/stages.ts';
import { useOrder } from '../order-screen.tsx';

interface MoveMenuProps {
  onForward: (to: Stage) => void;
  onBack: (to: Stage) => void;
}

/** Any stage of the route, from the keyboard too. */
export function MoveMenu({ onForward, onBack }: MoveMenuProps) {
  const { route, stage } = useOrder().order.card;
  const at = route.indexOf(stage);
  return (
    <Menu position="bottom-start" shadow="sm">
      <Menu.Target>
        <Button variant="default" rightSection={<IconChevronDown size={18} aria-hidden="true" />}>
          Move to...
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        {route.map((to, index) =>
          to === stage ? null : (
            <Menu.Item key={to} mih={44} onClick={() => (index < at ? onBack(to) : onForward(to))}>
              {index < at ? `Back to ${stageLabels[to]}` : `On to ${stageLabels[to]}`}
            </Menu.Item>
          ),
        )}
      </Menu.Dropdown>
    </Menu>
  );
}
