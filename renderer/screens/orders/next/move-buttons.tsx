import { Button } from '@mantine/core';
import type { MissingItem } from '../../../../shared/gates.ts';
import type { Stage } from '../../../../shared/stages.ts';
import { useOrder } from '../order-screen.tsx';
import { stepName } from './homeward.ts';
import { MoveMenu } from './move-menu.tsx';
import classes from './next-step.module.css';
import type { Asking, Move } from './use-move.ts';

interface MoveButtonsProps {
  /** Where the order goes next; null once nothing follows. */
  to: Stage | null;
  missing: readonly MissingItem[];
  move: Move;
  onAsk: (asking: Asking) => void;
}

/** On along the route, past a gate with the owner's reason, or anywhere else by menu. */
export function MoveButtons({ to, missing, move, onAsk }: MoveButtonsProps) {
  const { order, role, open } = useOrder();
  const { hold, stage, goingHome } = order.card;
  const barred = missing.some((item) => item.override === 'never');
  const mayPass = role === 'owner' && missing.length > 0 && !barred && hold === null;
  return (
    <div className={classes.actions}>
      {to === null ? null : (
        <Button
          className={classes.main}
          h="auto"
          mih={44}
          variant={missing.length === 0 && hold === null ? 'filled' : 'default'}
          loading={move.command.busy}
          onClick={() => void move.move(to)}
        >
          Move to {stepName(to, goingHome)}
        </Button>
      )}
      {mayPass && to !== null ? (
        <Button variant="default" onClick={() => onAsk({ what: 'override', to })}>
          Let it pass with a reason
        </Button>
      ) : null}
      {hold === null ? null : (
        <Button variant="default" onClick={() => open('hold')}>
          On hold: release it first
        </Button>
      )}
      {move.refusal === null ? null : (
        <Button variant="default" onClick={move.forget}>
          Back to the next step
        </Button>
      )}
      {stage === 'cancelled' ? null : (
        <MoveMenu
          onForward={(further) => void move.move(further)}
          onBack={(before) => onAsk({ what: 'back', to: before })}
        />
      )}
    </div>
  );
}
