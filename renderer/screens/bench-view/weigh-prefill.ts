import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Scale } from '../../../shared/contract/scales.ts';
import { decimal } from '../../../shared/measure.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { WeighPrefill } from './weigh-here.tsx';

const phaseIn: Partial<Record<Stage, WeighPrefill['phase']>> = {
  'weight-work': 'work',
  'strip-sand': 'after-sanding',
  finish: 'after-sanding',
  cure: 'final',
  'final-check': 'final',
};

type Weighed = Pick<OrderDetail, 'card' | 'limbSet' | 'readings' | 'targetDrawIn'>;

/** What a weighing of this order starts with: everything that stays as it was the last time. */
export function weighPrefill(order: Weighed, scales: readonly Scale[]): WeighPrefill {
  const standing = order.readings.filter(({ struckReason }) => struckReason === null);
  const last = standing.at(-1);
  const usable = scales.filter((scale) => scale.usable);
  const sameScale = usable.find(({ id }) => id === last?.scaleId);
  const only = usable.length === 1 ? usable[0] : undefined;
  const strings = standing.map(({ stringNote }) => stringNote).reverse();
  return {
    phase: phaseIn[order.card.stage] ?? 'arrival',
    drawReference: last?.drawReference ?? 'amo',
    limbSetId: order.limbSet?.id ?? null,
    riserNote: last?.riserNote ?? '',
    scaleId: (sameScale ?? only)?.id ?? null,
    rigZeroLbf: last?.rigZeroLbf ?? 0,
    braceIn: last?.braceIn ?? 7,
    stringNote: last?.stringNote ?? 'shop string',
    stringTrack: '',
    supportPoint: last?.supportPoint ?? '',
    pullPoint: last?.pullPoint ?? '',
    tillerIn: null,
    temperatureF: last?.temperatureF ?? null,
    moisturePct: null,
    strungMinutes: null,
    // The first pull is dropped: the bow was flexed before anything counts.
    flexedFirst: true,
    note: '',
    draws: drawsOf(order.targetDrawIn ?? 28, last?.pulls.map(({ drawIn }) => drawIn) ?? []),
    strings: strings.length === 0 ? ['shop string'] : [...new Set(strings)].slice(0, 4),
  };
}

/** Draws of the last weighing and the one of the job, which comes to hand first. */
function drawsOf(jobDrawIn: number, drawn: readonly number[]): number[] {
  const all = new Map([jobDrawIn, ...drawn].map((drawIn) => [decimal(drawIn, 4), drawIn]));
  return [...all.values()].slice(0, 4).sort((a, b) => a - b);
}
