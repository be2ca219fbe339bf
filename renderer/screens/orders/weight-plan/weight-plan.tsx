import { Button } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'wouter';
import { decimal } from '../../../../shared/measure.ts';
import type { PlanSummary } from '../../../../shared/plan-record.ts';
import { closedStages, roomOf } from '../../../../shared/stages.ts';
import { planMethodLabels } from '../../../../shared/weight-plan.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Facts } from '../../../parts/facts.tsx';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { WeightStrip } from '../../../parts/weight-strip.tsx';
import { PaperDialog } from '../../papers/paper-dialog.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { StrikeOut } from '../strike-out.tsx';
import { readOrdersAgain } from '../use-order-command.ts';
import { planFacts, planState, standingPlan, stripOf } from './plan-words.ts';

function Standing({ plan }: { plan: PlanSummary }) {
  const { order } = useOrder();
  return (
    <>
      {plan.fits.ok ? (
        <Mark kind="done">It fits the bow and the order as they are recorded.</Mark>
      ) : (
        <div role="status">
          <Mark kind="attention">It no longer fits. Plan again before more comes off.</Mark>
          <ul className={classes.words}>
            {plan.fits.why.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      )}
      <div style={{ margin: '12px 0' }}>
        <WeightStrip facts={stripOf(plan, order.card.weights)} />
      </div>
      <Facts facts={planFacts(plan)} />
      <StrikeOut what={`plan ${plan.version}`} record={plan} fn={api.plans.strikeOut} />
    </>
  );
}

function Older({ plans }: { plans: readonly PlanSummary[] }) {
  if (plans.length === 0) return null;
  return (
    <Fold title="Earlier plans" said={String(plans.length)}>
      <ul className={classes.list}>
        {plans.map((plan) => (
          <li key={plan.id} className={classes.item}>
            <span className={plan.struckReason === null ? undefined : classes.struck}>
              Plan {plan.version}, {planMethodLabels[plan.method].toLowerCase()}, stop at{' '}
              {decimal(plan.stopAtLbf)} lb @ {decimal(plan.drawIn, 4)}"
            </span>
            <p className={classes.quiet}>
              {momentText(plan.acceptedAt)}, {plan.personName}
              {plan.struckReason === null ? '' : `. Struck out: ${plan.struckReason}`}
            </p>
          </li>
        ))}
      </ul>
    </Fold>
  );
}

function Buttons({ plan }: { plan: PlanSummary | null }) {
  const { order } = useOrder();
  const [isPrinting, setPrinting] = useState(false);
  const { id, stage, number } = order.card;
  const isClosed = closedStages.includes(stage);
  const isAtBench = roomOf[stage] === 'bench';
  return (
    <div className={classes.buttons} style={{ marginTop: 12 }}>
      {isClosed ? null : (
        <Button
          component={Link}
          href={`/weight-bench/order/${id}`}
          variant={plan?.fits.ok === true ? 'default' : 'filled'}
        >
          Open the weight bench
        </Button>
      )}
      {isAtBench && !isClosed ? (
        <Button component={Link} href={`/bench/${id}`} variant="default">
          Go to the bench view
        </Button>
      ) : null}
      {plan === null ? null : (
        <Button variant="default" onClick={() => setPrinting(true)}>
          Marking-out template ...
        </Button>
      )}
      {isPrinting ? (
        <PaperDialog
          orderId={id}
          number={number}
          kind="marking-template"
          onIssued={readOrdersAgain}
          onClose={() => setPrinting(false)}
        />
      ) : null}
    </div>
  );
}

/** The plan that was accepted for this order, whether it still fits, and the way to the bench. */
export function WeightPlan() {
  const { order } = useOrder();
  const plan = standingPlan(order.plans);
  if (!order.services.includes('reduce-weight') && order.plans.length === 0) return null;
  return (
    <OrderSection place="weight-plan" title="Weight plan" state={planState(order)} saysItself>
      {plan === null ? (
        <p className={classes.quiet}>
          No plan is accepted yet. The weight bench shows every way to the target side by side.
        </p>
      ) : (
        <Standing plan={plan} />
      )}
      <Buttons plan={plan} />
      <Older plans={order.plans.filter(({ id }) => id !== plan?.id)} />
    </OrderSection>
  );
}
