import type { PlanGap, PlanStart } from '../../../shared/plan-record.ts';

const labels: Record<PlanGap['fix'], string> = {
  bow: 'Write it on the bow',
  'limb-set': 'Write it on the limbs',
  geometry: 'Measure the limbs',
  weighings: 'Weigh the bow',
  arrival: 'To the unpacking table',
  order: 'Write it on the order',
};

/** Where a gap is closed; null where no record stands behind the plan. */
export function gapPlace(
  fix: PlanGap['fix'],
  { orderId, bowId }: PlanStart['about'],
): { href: string; label: string } | null {
  const label = labels[fix];
  const bow = bowId === null ? null : { href: `/bows/${bowId}`, label };
  if (fix === 'bow' || fix === 'limb-set') return bow;
  if (orderId === null) return fix === 'geometry' ? bow : null;
  switch (fix) {
    case 'geometry':
      return { href: `/orders/${orderId}?open=geometry`, label };
    case 'weighings':
      return { href: `/orders/${orderId}?open=weighings`, label };
    case 'arrival':
      return { href: `/orders/${orderId}/unpacking`, label };
    case 'order':
      // With the bow known, its section leads to the facts of the job.
      return { href: `/orders/${orderId}?open=bow`, label };
  }
}
