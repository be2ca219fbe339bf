import { Button, CopyButton } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { MissingItem } from '../../../shared/gates.ts';
import { orpc } from '../../api/client.ts';
import { addressLines } from '../../parts/address-fields.tsx';
import { moneyText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import { HereAlready } from './here-already.tsx';
import classes from './intake.module.css';
import { packingText } from './packing-advice.ts';

export interface TakenInOrder {
  id: string;
  number: string;
  estimateCents: number | null;
  /** The bow is here, and what keeps it from counting as arrived; null where it is still to come. */
  missing: readonly MissingItem[] | null;
}

interface TakenInProps {
  order: TakenInOrder;
  onNext: () => void;
}

/** The number, the estimate and what comes next: packing advice, or the unpacking table. */
export function TakenIn({ order, onNext }: TakenInProps) {
  return (
    <Panel title="Taken in">
      <div className={classes.stack}>
        <Mark kind="done">The request is an order now. Its number:</Mark>
        <p className={classes.number}>{order.number}</p>
        <p style={{ margin: 0 }}>
          {order.estimateCents === null
            ? 'No estimate given.'
            : `Estimate ${moneyText(order.estimateCents)}`}
        </p>
        {order.missing === null ? (
          <StillToCome order={order} onNext={onNext} />
        ) : (
          <HereAlready orderId={order.id} missing={order.missing} onNext={onNext} />
        )}
      </div>
    </Panel>
  );
}

function StillToCome({ order, onNext }: TakenInProps) {
  const shop = useQuery(orpc.shop.get.queryOptions()).data ?? null;
  const text = packingText({
    ...order,
    shop,
    addressLines: shop === null ? [] : addressLines(shop.address),
  });
  return (
    <>
      <div className={classes.buttons}>
        <Button component={Link} href={`/orders/${order.id}`}>
          Open the order
        </Button>
        <CopyButton value={text}>
          {({ copied, copy }) => (
            <Button variant="default" onClick={copy}>
              {copied ? 'Copied' : 'Copy the text for the customer'}
            </Button>
          )}
        </CopyButton>
        <Button variant="default" onClick={onNext}>
          Take in another
        </Button>
      </div>
      <pre className={classes.advice}>{text}</pre>
      <span className={classes.quiet}>Packing advice: common practice.</span>
    </>
  );
}
