import { Button } from '@mantine/core';
import { Link } from 'wouter';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { Mark } from '../../parts/mark.tsx';
import { Page } from '../../parts/page.tsx';
import { OrderLoader } from '../orders/order-loader.tsx';
import { BelongingsStep } from './belongings-step.tsx';
import { BoxStep } from './box-step.tsx';
import { CompleteStep } from './complete-step.tsx';
import { LookStep } from './look-step.tsx';
import { RestStep } from './rest-step.tsx';
import { StopSign } from './stop-sign.tsx';
import { StringStep } from './string-step.tsx';
import classes from './unpacking.module.css';
import { UnsavedProvider } from './unsaved.tsx';
import { WeighStep } from './weigh-step.tsx';

function TableHead({ order }: { order: OrderDetail }) {
  const { id, customerName, bowLine } = order.card;
  return (
    <>
      <p className={classes.bow}>
        {customerName}, {bowLine}
      </p>
      {order.bow === null ? (
        <div className={classes.buttons}>
          <Mark kind="attention">The bow is not identified yet.</Mark>
          <Button component={Link} href={`/orders/${id}?open=bow`} variant="default">
            Identify the bow
          </Button>
        </div>
      ) : null}
    </>
  );
}

function Table({ order }: { order: OrderDetail }) {
  const { id, number } = order.card;
  return (
    <Page
      title={`${number}  At the unpacking table`}
      windowTitle={`${number} unpacking`}
      actions={
        <Button component={Link} href={`/orders/${id}`} variant="default">
          Open the order
        </Button>
      }
    >
      <div className={classes.table}>
        <TableHead order={order} />
        <StopSign isFirst />
        <BoxStep />
        <BelongingsStep />
        <RestStep />
        <LookStep />
        <StringStep />
        <WeighStep />
        <CompleteStep />
      </div>
    </Page>
  );
}

/** One page for the table where the box is opened, top to bottom in the order of the work. */
export function UnpackingPage({ id }: { id: string }) {
  return (
    <OrderLoader id={id} title="At the unpacking table">
      {(order) => (
        <UnsavedProvider>
          <Table order={order} />
        </UnsavedProvider>
      )}
    </OrderLoader>
  );
}
