import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { decimal } from '../../../shared/measure.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';
import { orpc } from '../../api/client.ts';
import { EmptyNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { OrderLoader } from '../orders/order-loader.tsx';
import { standingPlan } from '../orders/weight-plan/plan-words.ts';
import { Banner } from './banner.tsx';
import { DeskBody } from './desk-body.tsx';
import { weighingsOf } from './order-facts.ts';
import { BeganFrom, StartLoader } from './start-loader.tsx';

interface BannersProps {
  order: OrderDetail;
  isBeingPlanned: boolean;
  onPlan: () => void;
  acceptedVersion: number | null;
}

/** How the accepted plan stands with the records. */
function PlanBanner({ order, isBeingPlanned, onPlan, acceptedVersion }: BannersProps) {
  const plan = standingPlan(order.plans);
  if (plan === null) return null;
  const name = `Plan ${plan.version} (${planMethodLabels[plan.method].toLowerCase()})`;
  if (!plan.fits.ok) {
    return (
      <Banner
        kind="attention"
        title={`${name} no longer fits.`}
        why={plan.fits.why}
        actions={isBeingPlanned ? null : <Button onClick={onPlan}>Plan again</Button>}
      />
    );
  }
  const isNew = plan.version === acceptedVersion;
  return (
    <Banner
      kind="done"
      title={`${name} is ${isNew ? 'now the plan of this order' : 'accepted'}: stop at ${plan.stopAtLbf.toFixed(1)} lb, forecast ${plan.forecastLbf.toFixed(1)} lb @ ${decimal(plan.drawIn, 4)}".`}
      why={[]}
      actions={
        <Button variant="default" component={Link} href={`/bench/${order.card.id}`}>
          Go to the bench view
        </Button>
      }
    />
  );
}

function Loaded({ order }: { order: OrderDetail }) {
  const id = order.card.id;
  const query = useQuery(orpc.plans.start.queryOptions({ input: { orderId: id } }));
  const [acceptedVersion, setAccepted] = useState<number | null>(null);
  return (
    <StartLoader query={query}>
      {(fresh) => (
        <BeganFrom fresh={fresh}>
          {(start: PlanStart, changed, beginAgain, times) => (
            <DeskBody
              key={times}
              start={start}
              story={{ weighings: weighingsOf(order.readings, start.input.wish.drawIn) }}
              onAccepted={setAccepted}
            >
              <PlanBanner
                order={order}
                isBeingPlanned={changed === null}
                onPlan={beginAgain}
                acceptedVersion={acceptedVersion}
              />
              {changed}
              {start.notNow === null ? null : (
                <Banner kind="attention" title={start.notNow} why={[]} actions={null} />
              )}
            </DeskBody>
          )}
        </BeganFrom>
      )}
    </StartLoader>
  );
}

/** The weight bench on one order. */
export function OrderDesk({ id }: { id: string }) {
  return (
    <OrderLoader id={id} title="Weight bench">
      {(order) => {
        const { number, customerName, bowLine } = order.card;
        return (
          <Page
            title={`Weight bench  ${number}`}
            windowTitle={`Weight bench ${number}`}
            actions={
              <Link href={`/orders/${id}`}>
                Order {number} {customerName}
                {bowLine === '' ? '' : `, ${bowLine}`}
              </Link>
            }
          >
            {order.bow === null ? (
              <EmptyNote title="Nobody knows yet which bow this order is about.">
                <Link href={`/orders/${id}?open=bow`}>Identify the bow</Link> first. Until then a{' '}
                <Link href="/weight-bench/what-if">what-if without records</Link> is open to you.
              </EmptyNote>
            ) : (
              <Loaded order={order} />
            )}
          </Page>
        );
      }}
    </OrderLoader>
  );
}
