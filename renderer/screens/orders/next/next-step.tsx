import { Button } from '@mantine/core';
import { useState } from 'react';
import { type Stage, stageLabels } from '../../../../shared/stages.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { MissingList } from '../../../parts/missing-list.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { ReasonForm } from '../../../parts/reason-form.tsx';
import { useOrder } from '../order-screen.tsx';
import { useWayTo } from '../use-way-to.ts';
import { isUnsafe, stepName } from './homeward.ts';
import { MoveMenu } from './move-menu.tsx';
import classes from './next-step.module.css';
import { SideSteps } from './side-steps.tsx';
import { type Move, useMove } from './use-move.ts';

type Asking = { what: 'back' | 'override'; to: Stage };

/** One button with its reasons: where the order goes next and what that still needs. */
export function NextStep() {
  const { order, role, open } = useOrder();
  const [asking, setAsking] = useState<Asking | null>(null);
  const move = useMove();
  const to = move.refusal?.to ?? order.next?.stage ?? null;
  const missing = move.refusal?.missing ?? order.next?.missing ?? [];
  const { hold, stage, goingHome } = order.card;
  const wayTo = useWayTo();
  const barred = missing.some((item) => item.override === 'never');
  const mayPass = role === 'owner' && missing.length > 0 && !barred && hold === null;

  if (asking !== null) {
    return (
      <Panel title="Next step">
        <AskedReason asking={asking} move={move} onDone={() => setAsking(null)} />
      </Panel>
    );
  }
  return (
    <Panel title="Next step">
      {to === null ? <Ended stage={stage} /> : null}
      {to === 'packed' && goingHome !== null && isUnsafe(order.card, goingHome) ? (
        <p className={classes.text}>
          <Mark kind="stop">It goes unstrung, with the tag DO NOT STRING OR DRAW on it.</Mark>
        </p>
      ) : null}
      {missing.length > 0 && to !== null ? (
        <>
          <p className={classes.text} aria-live="polite">
            {stepName(to, goingHome)} still needs{' '}
            {missing.length === 1 ? 'this' : `these ${missing.length}`}:
          </p>
          <MissingList
            missing={missing}
            wayTo={wayTo}
            nameGates={move.refusal !== null}
            showBarred={role === 'owner'}
          />
        </>
      ) : null}
      {asking === null ? <CommandError command={move.command} /> : null}
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
          <Button variant="default" onClick={() => setAsking({ what: 'override', to })}>
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
            onForward={(to) => void move.move(to)}
            onBack={(to) => setAsking({ what: 'back', to })}
          />
        )}
      </div>
      <SideSteps />
    </Panel>
  );
}

function Ended({ stage }: { stage: Stage }) {
  if (stage === 'cancelled') return <p className={classes.text}>The request was cancelled.</p>;
  return <Mark kind="done">The bow has left the shop.</Mark>;
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
