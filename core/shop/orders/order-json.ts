import type { Service, Stage } from '../../../shared/stages.ts';
import type { OrderRow } from '../../storage/tables.ts';

export function servicesOf(order: Pick<OrderRow, 'services_json'>): Service[] {
  return JSON.parse(order.services_json) as Service[];
}

export function routeOf(order: Pick<OrderRow, 'route_json'>): Stage[] {
  return JSON.parse(order.route_json) as Stage[];
}
