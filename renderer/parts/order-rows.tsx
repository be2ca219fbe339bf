import type { OrderCard } from '../../shared/contract/order-card.ts';
import { closedStages, serviceLabels, stageLabels } from '../../shared/stages.ts';
import { dayOf, dueText, fullDay } from './days.ts';
import { LinkRow, Rows } from './rows.tsx';
import { weightsLine } from './weights-line.ts';

interface OrderRowsProps {
  orders: readonly OrderCard[];
  /** What else to say of each: its bow on a customer's page, its customer on a bow's. */
  about: (order: OrderCard) => string;
}

function whenOf(order: OrderCard): string {
  const stage = stageLabels[order.stage];
  if (closedStages.includes(order.stage)) return `${stage} ${fullDay(dayOf(order.stageSince))}`;
  return order.promisedOn === null ? stage : `${stage}, ${dueText(order.promisedOn)}`;
}

/** Orders of one customer or one bow, newest first as they come. */
export function OrderRows({ orders, about }: OrderRowsProps) {
  return (
    <Rows label="Orders">
      {orders.map((order) => {
        const services = order.services.map((service) => serviceLabels[service]).join(', ');
        const line = [about(order), services, weightsLine(order.weights)].filter(Boolean);
        return (
          <LinkRow
            key={order.id}
            href={`/orders/${order.id}`}
            title={order.number}
            line={line.join(' · ')}
            side={whenOf(order)}
          />
        );
      })}
    </Rows>
  );
}
