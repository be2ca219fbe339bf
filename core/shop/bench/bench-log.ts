import type { BenchLog } from '../../../shared/contract/bench-records.ts';
import type { OpenShop } from '../../storage/context.ts';
import { glassChecksOf } from './glass-checks.ts';
import { removalsOf } from './removals.ts';
import { tillerReadingsOf } from './tiller-readings.ts';

/** What was taken off, looked at and read on an order, newest first. */
export async function benchLogOf(shop: OpenShop, orderId: string): Promise<BenchLog> {
  return {
    removals: await removalsOf(shop, orderId),
    glassChecks: await glassChecksOf(shop, orderId),
    tillerReadings: await tillerReadingsOf(shop, orderId),
  };
}
