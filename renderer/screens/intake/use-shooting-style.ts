import { useQuery } from '@tanstack/react-query';
import type { Customer } from '../../../shared/contract/customers.ts';
import { orpc } from '../../api/client.ts';
import type { IntakeForm } from './intake-form.ts';

/** How this customer holds the string, which the tiller offered depends on. */
export function useShootingStyle(form: IntakeForm): Customer['shootingStyle'] {
  const isKnown = form.customerIs === 'known';
  const query = useQuery({
    ...orpc.customers.get.queryOptions({ input: { id: form.customerId } }),
    enabled: isKnown,
  });
  if (form.customerIs === 'new') return form.customer.shootingStyle;
  return isKnown ? (query.data?.customer.shootingStyle ?? 'unknown') : 'unknown';
}
