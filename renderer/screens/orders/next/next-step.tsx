import { useState } from 'react';
import type { MissingItem } from '../../../../shared/gates.ts';
import { type Stage, stageLabels } from '../../../../shared/stages.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { MissingList } from '../../../parts/missing-list.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { ReasonForm } from '../../../parts/reason-form.tsx';
import { useOrder } from '../order-screen.tsx';
import { useWayTo } from '../use-way-to.ts';
import { isUnsafe, stepName } from './homeward.ts';
import { MoveButtons } from './move-buttons.tsx';
import classes from './next-step.module.css';
import { SideSteps } from './side-steps.tsx';
import { type Asking, type Move, useMove } from './use-move.ts';

/** One button with its reasons: where the order goes next and what that still needs. */
export function NextStep() {
  const { order } = useOrder();
  const [asking, setAsking] = useState<Asking | null>(null);
  const move = useMove();
  const to = move.refusal?.to ?? order.next?.stage ?? null;
  const missing = move.refusal?.missing ?? order.next?.missing ?? [];
  if (asking !== null) {
    return (
      <Panel title="Next step">
        <AskedReason asking={asking} move={move} onDone={() => setAsking(null)} />
      </Panel>
    );
  }
  return (
    <Panel title="Next step">
      {to === null ? <Ended /> : null}
      {to === 'packed' ? <TagWarning /> : null}
      {to === null ? null : (
        <StillNeeds to={to} missing={missing} nameGates={move.refusal !== null} />
      )}
      <CommandError command={move.command} />
      <MoveButtons to={to} missing={missing} move={move} onAsk={setAsking} />
      <SideSteps />
    </Panel>
  );
}

function Ended() {
  if (useOrder().order.card.stage === 'cancelled') {
    return <p className={classes.text}>The request was cancelled.</p>;
  }
  return <Mark kind="done">The bow has left the shop.</Mark>;
}

function TagWarning() {
  const { card } = useOrder().order;
  if (card.goingHome === null || !isUnsafe(card, card.goingHome)) return null;
  return (
    <p className={classes.text}>
      <Mark kind="stop">It goes unstrung, with the tag DO NOT STRING OR DRAW on it.</Mark>
    </p>
  );
}

interface StillNeedsProps {
  to: Stage;
  missing: readonly MissingItem[];
  nameGates: boolean;
}

function StillNeeds({ to, missing, nameGates }: StillNeedsProps) {
  const { order, role } = useOrder();
  const wayTo = useWayTo();
  if (missing.length === 0) return null;
  return (
    <>
      <p className={classes.text} aria-live="polite">
        {stepName(to, order.card.goingHome)} still needs{' '}
        {missing.length === 1 ? 'this' : `these ${missing.length}`}:
      </p>
      <MissingList
        missing={missing}
        wayTo={wayTo}
        nameGates={nameGates}
        showBarred={role === 'owner'}
      />
    </>
  );
}

interface AskedReasonProps {
  asking: Asking;
  move: Move;
  onDone: () => void;
}

function AskedReason({ asking: { what, to }, move, onDone }: AskedReasonProps) {
  const isBack = what === 'back';
  return (
    <ReasonForm
      title={isBack ? `Back to ${stageLabels[to]}` : `On to ${stageLabels[to]} as it stands`}
      label={isBack ? 'Why does the order go back?' : 'Why may it pass with this missing?'}
      submitLabel={isBack ? `Move back to ${stageLabels[to]}` : 'Let it pass'}
      command={move.command}
      onCancel={() => {
        move.command.reset();
        onDone();
      }}
      onSubmit={async (reason) => {
        const result = await move.move(to, isBack ? { reason } : { override: { reason } });
        if (result !== undefined) onDone();
      }}
    />
  );
}
