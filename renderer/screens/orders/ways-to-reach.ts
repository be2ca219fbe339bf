import type { Customer } from '../../../shared/contract/customers.ts';

/** Ways to reach a customer, as they are written into a record. */
export function waysToReach(customer: Pick<Customer, 'email' | 'phone'> | null): string[] {
  const email = customer?.email ?? '';
  const phone = customer?.phone ?? '';
  return [
    email === '' ? 'by e-mail' : `by e-mail to ${email}`,
    phone === '' ? 'by phone' : `by phone, ${phone}`,
    'in person',
    'by letter',
  ];
}
