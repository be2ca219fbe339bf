import { id, line, reason } from './fields.ts';
import { stages } from './stages.ts';
import { z } from './zod.ts';

/** Steps inside a stage that have a gate of their own. */
export const stepGates = ['bite', 'lettering', 'first-clear', 'coat'] as const;
export const gate = z.enum([...stages, ...stepGates]);
export type Gate = z.infer<typeof gate>;

export const gateLabels: Record<(typeof stepGates)[number], string> = {
  bite: 'taking the next bite',
  lettering: 'lettering',
  'first-clear': 'the first clear coat over lettering',
  coat: 'coating',
};

/** Part of the order page where a missing item is put right. */
export const sections = [
  'bow',
  'arrival',
  'geometry',
  'bench-log',
  'bench-records',
  'findings',
  'weighings',
  'consents',
  'inscription',
  'finish',
  'undershoot',
  'incidents',
  'final-check',
  'shipping',
  'papers',
  'address',
] as const;
export const section = z.enum(sections);
export type Section = z.infer<typeof section>;

/** One thing a gate still needs: what, where to fix it, and whether the owner may let it pass. */
export const missingItem = z.object({
  item: line(60),
  gate,
  sentence: line(400),
  section,
  /** Which entry or consent kind to open there, if one fits. */
  opens: line(60).nullable(),
  override: z.enum(['owner', 'never']),
});
export type MissingItem = z.infer<typeof missingItem>;

export const override = z.object({ reason });

export const refused = z.object({
  outcome: z.literal('refused'),
  orderId: id,
  missing: z.array(missingItem).max(100),
});
