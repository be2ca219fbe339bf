import type { ForecastJob } from '../../../shared/contract/learned.ts';

/** A closed job that ended as predicted, with what a test is about laid over it. */
export function job(part: Partial<ForecastJob> = {}): ForecastJob {
  return {
    orderId: 'order-1',
    orderNumber: '26-0001',
    closedOn: '2026-06-15',
    bowName: 'longbow 66", Fernhollow Kestrel',
    construction: 'glass-laminated',
    method: 'narrowing',
    biteMethods: ['narrow'],
    bites: 3,
    weighings: 5,
    drawIn: 28,
    arrivalLbf: 52,
    targetLbf: 45,
    forecastLbf: 45.4,
    bandLbf: [44.6, 46.2],
    measuredLbf: 45.1,
    isInside: true,
    measuredDropLbf: 6.9,
    forecastDropLbf: 6.6,
    allowanceThou: 1.5,
    sanding: 'full strip',
    effectiveness: 1.06,
    ...part,
  };
}

export function jobs(
  count: number,
  inside: number,
  part: Partial<ForecastJob> = {},
): ForecastJob[] {
  return Array.from({ length: count }, (_, i) =>
    job({ orderId: `order-${i}`, isInside: i < inside, ...part }),
  );
}
