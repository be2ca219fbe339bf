import type { WorkOrderData } from './data.ts';

/** First name and initial only, `Nora H.`; a name already short stays as it is. */
function shortName(name: string): string {
  const [first = '', ...rest] = name.trim().split(/\s+/);
  const last = rest.at(-1);
  return last === undefined ? first : `${first} ${[...last][0]}.`;
}

/** What this copy may show. The bench copy loses the rest here, before any of it is drawn. */
export function forCopy(data: WorkOrderData): WorkOrderData {
  if (data.copy === 'office') return data;
  const customer =
    data.customer === null
      ? null
      : { name: shortName(data.customer.name), lines: [], phone: '', email: '' };
  return { ...data, customer, price: null };
}
