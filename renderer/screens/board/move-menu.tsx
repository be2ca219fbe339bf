import { Button, Menu } from '@mantine/core';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';

interface MoveMenuProps {
  card: OrderCard;
  onMove: (to: Stage) => void;
}

/** The stages of this order's own route, for hands that do not drag. */
export function MoveMenu({ card, onMove }: MoveMenuProps) {
  const here = card.route.indexOf(card.stage);
  // A cancelled request stands beside its route: it is taken up again on its own page.
  if (here === -1) return null;
  return (
    <Menu position="bottom-start" width={240} shadow="md">
      <Menu.Target>
        <Button variant="subtle" px={8} ml={-8} aria-label={`Move to... for order ${card.number}`}>
          Move to...
        </Button>
      </Menu.Target>
      <Menu.Dropdown mah="60vh" style={{ overflowY: 'auto' }}>
        {card.route.map((stage, place) => (
          <Menu.Item
            key={stage}
            mih={44}
            disabled={place === here}
            rightSection={place === here ? 'here' : place < here ? 'back' : null}
            onClick={() => onMove(stage)}
          >
            {stageLabels[stage]}
          </Menu.Item>
        ))}
      </Menu.Dropdown>
    </Menu>
  );
}
