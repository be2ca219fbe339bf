import { createContext, type ReactNode, useContext, useMemo } from 'react';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { type Role, roles } from '../../../shared/people.ts';
import { useWho } from '../../api/who.ts';
import { type OpenForms, useOpenForms } from './open-forms.ts';

/** What every part of the order page works on. */
export interface OrderScreen extends OpenForms {
  order: OrderDetail;
  role: Role;
  /** Talks to customers and changes the order: owner and office. */
  isOffice: boolean;
}

const Screen = createContext<OrderScreen | null>(null);

export function useOrder(): OrderScreen {
  const screen = useContext(Screen);
  if (screen === null) throw new Error('useOrder belongs inside an order page');
  return screen;
}

interface ProviderProps {
  order: OrderDetail;
  children: ReactNode;
}

export function OrderScreenProvider({ order, children }: ProviderProps) {
  const role = useWho()?.role ?? leastRole;
  const forms = useOpenForms(order);
  const screen = useMemo(
    () => ({ order, role, isOffice: role !== 'bench', ...forms }),
    [order, role, forms],
  );
  return <Screen value={screen}>{children}</Screen>;
}

/** Until it is known who works here, offer no more than the bench may do. */
const leastRole: Role = roles[2];
