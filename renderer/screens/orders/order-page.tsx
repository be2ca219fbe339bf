import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Stage } from '../../../shared/stages.ts';
import { Page } from '../../parts/page.tsx';
import { Arrival } from './arrival/arrival.tsx';
import { BenchLog } from './bench-log/bench-log.tsx';
import { BenchRecords } from './bench-records/bench-records.tsx';
import { Consents } from './consents/consents.tsx';
import { BowFacts } from './facts/bow-facts.tsx';
import { CustomerFacts } from './facts/customer-facts.tsx';
import { JobFacts } from './facts/job-facts.tsx';
import { FinalCheck } from './final-check/final-check.tsx';
import { Findings } from './findings/findings.tsx';
import { Finish } from './finish/finish.tsx';
import { Geometry } from './geometry/geometry.tsx';
import { OrderHead } from './head/order-head.tsx';
import { History } from './history/history.tsx';
import { Holds } from './holds/holds.tsx';
import { Incidents } from './incidents/incidents.tsx';
import { Inscription } from './inscription/inscription.tsx';
import { Messages } from './messages/messages.tsx';
import { NextStep } from './next/next-step.tsx';
import { OrderLoader } from './order-loader.tsx';
import classes from './order-page.module.css';
import { OrderPapers } from './papers/order-papers.tsx';
import { Photos } from './photos/photos.tsx';
import { Price } from './price/price.tsx';
import { Shipping } from './shipping/shipping.tsx';
import { OrderTasks } from './tasks/tasks.tsx';
import { Undershoot } from './undershoot/undershoot.tsx';
import { WeightStory } from './weighings/weight-story.tsx';
import { WeightPlan } from './weight-plan/weight-plan.tsx';

/** Stages in which the last look and the box are the work: they stand first then. */
const leavingStages: readonly Stage[] = ['final-check', 'packed'];

function Leaving() {
  return (
    <>
      <FinalCheck />
      <Shipping />
    </>
  );
}

function OrderBody({ order }: { order: OrderDetail }) {
  const { number, customerId, customerName } = order.card;
  const who = customerId === null ? "the shop's own bow" : customerName;
  const isLeaving = leavingStages.includes(order.card.stage);
  return (
    <Page title={`${number}  ${who}`} windowTitle={`${number} ${who}`}>
      <OrderHead />
      <div className={classes.columns}>
        <div className={classes.column}>
          <NextStep />
          {isLeaving ? <Leaving /> : null}
          <Arrival />
          <Findings />
          <Incidents />
          <Consents />
          <Messages />
          <Inscription />
          <WeightStory />
          <WeightPlan />
          <Undershoot />
          <Geometry />
          <BenchRecords />
          <Finish />
          <BenchLog />
          {isLeaving ? null : <Leaving />}
          <Photos />
          <History />
        </div>
        <div className={classes.column}>
          <CustomerFacts />
          <BowFacts />
          <JobFacts />
          <Price />
          <Holds />
          <OrderTasks />
          <OrderPapers />
        </div>
      </div>
    </Page>
  );
}

/** Everything about one job on one page. */
export function OrderPage({ id }: { id: string }) {
  return (
    <OrderLoader id={id} title="Order">
      {(order) => <OrderBody order={order} />}
    </OrderLoader>
  );
}
