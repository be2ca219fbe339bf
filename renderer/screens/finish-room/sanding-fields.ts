import type { ConsumableSummary } from '../../../shared/contract/stores.ts';
import type { BowSection, Substrate } from '../../../shared/finish.ts';
import { gritFrom, gritKey } from './grit-key.ts';
import { instantFrom } from './when.ts';

/** A sanding as the form holds it. */
export interface SandingFields {
  orderId: string | null;
  /** `upper-limb:glass`. */
  parts: readonly string[];
  grit: string | null;
  strokes: number | null;
  wiped: boolean;
  isLast: boolean;
  note: string;
  at: string;
}

export const newSanding = (orderId: string | null): SandingFields => ({
  orderId,
  parts: [],
  grit: null,
  strokes: null,
  wiped: false,
  isLast: false,
  note: '',
  at: '',
});

export const partKey = (section: BowSection, substrate: Substrate) => `${section}:${substrate}`;

/** What a section is made of, the usual first. */
export const substratesOf: Record<BowSection, readonly Substrate[]> = {
  'upper-limb': ['glass', 'wood'],
  'lower-limb': ['glass', 'wood'],
  riser: ['wood', 'glass', 'overlay'],
  overlays: ['overlay'],
};

function partsFrom(keys: readonly string[]) {
  return keys.map((key) => {
    const [section, substrate] = key.split(':');
    return { section: section as BowSection, substrate: substrate as Substrate };
  });
}

export const sandingInput = (fields: SandingFields) => ({
  orderId: fields.orderId ?? '',
  parts: partsFrom(fields.parts),
  grit: gritFrom(fields.grit) ?? { grit: Number.NaN, scale: 'P' as const },
  strokes: fields.strokes,
  wiped: fields.wiped,
  isLast: fields.isLast,
  note: fields.note,
  at: instantFrom(fields.at),
});

/** Grits that lie in the stores, coarsest first by grain size, each once. */
export function gritsOnHand(consumables: readonly ConsumableSummary[]) {
  const onHand = consumables.flatMap(({ category, active, grit, inDate }) =>
    category === 'abrasive' && active && grit !== null && inDate > 0 ? [grit] : [],
  );
  const once = new Map(onHand.map((grit) => [gritKey(grit), grit]));
  return [...once.values()].sort((a, b) => b.micrometres - a.micrometres);
}
