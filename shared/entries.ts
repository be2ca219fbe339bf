import type { Gate } from './gates.ts';
import { z } from './zod.ts';

/** Dated notes that stand for a gate's record: who, when, how, and in which words. */
export const entryItems = [
  'arrived-on',
  'condition',
  'belongings',
  'arrival-check',
  'target-feasible',
  'stations',
  'plan-accepted',
  'bare-glass',
  'removal',
  'glass-check',
  'tiller-read',
  'last-grit',
  'finish-system',
  'air',
  'lettering-applied',
  'lettering-dry',
  'first-clear',
  'pot-life',
  'lots-in-date',
  'recoat-window',
  'coat',
  'string-and-flex',
  'final-safety',
  'final-looks',
  'belongings-back',
  'paid-or-terms',
  'safe-to-wrap',
  'carrier-limits',
  'tracking',
  'handed-to',
] as const;
export const entryItem = z.enum(entryItems);
export type EntryItem = z.infer<typeof entryItem>;

export interface EntryKind {
  label: string;
  /** What the note should hold. */
  hint: string;
  noteRequired: boolean;
  /** Gate passed before this entry may be written. */
  step: Gate | null;
}

const kind = (
  label: string,
  hint: string,
  noteRequired = false,
  step: Gate | null = null,
): EntryKind => ({
  label,
  hint,
  noteRequired,
  step,
});

export const entryKinds: Record<EntryItem, EntryKind> = {
  'arrived-on': kind('Box opened', 'The day it came, who brought it.'),
  condition: kind('Condition on arrival', 'Packaging and bow as they came out of the box.', true),
  belongings: kind(
    'Belongings',
    'String, quiver, silencers, rest, sock, stringer. Or "none".',
    true,
  ),
  'arrival-check': kind(
    'Arrival check',
    'Alignment, brace, tiller. Or "not strung because ...".',
    true,
  ),
  'target-feasible': kind('Target can be reached', 'Why this limb can give that much.', true),
  stations: kind(
    'Limb widths and thicknesses',
    'Measured, or "unknown section, wider band accepted".',
    true,
  ),
  'plan-accepted': kind('Weight plan accepted', 'Method, stop weight, who decided.', true),
  'bare-glass': kind('Glass bare or no thinning planned', 'Which of the two.', true),
  removal: kind('Bite taken', 'Limb, side, stations, per side and in total.', true, 'bite'),
  'glass-check': kind(
    'Glass check',
    'Show-through, lifted strands, run-out, exposed core: none seen.',
  ),
  'tiller-read': kind(
    'Tiller and string track',
    'Upper minus lower at the fades; where the string runs.',
    true,
  ),
  'last-grit': kind('Last grit', 'Per section, e.g. limbs 320, riser 220.', true),
  'finish-system': kind('Finish chosen', 'Which finish, which sheet revision.', true),
  air: kind('Air in the finish room', 'Temperature, humidity, surface above dew point.', true),
  'lettering-applied': kind('Lettering applied', 'Where, by whom.', false, 'lettering'),
  'lettering-dry': kind('Lettering dry', 'How it was tried.'),
  'first-clear': kind('First clear coat', 'Sections, wet film.', false, 'first-clear'),
  'pot-life': kind('Inside pot life', 'Mixed at, usable until.', true),
  'lots-in-date': kind('Lots in date', 'Lot numbers of both parts.', true),
  'recoat-window': kind(
    'Recoat window or scuff',
    'Hours since the last coat, or the scuff grit.',
    true,
  ),
  coat: kind('Coat', 'Sections, wet film.', false, 'coat'),
  'string-and-flex': kind(
    'Time to string and flex passed',
    'By the finish sheet; since when.',
    true,
  ),
  'final-safety': kind(
    'Flexed twenty times and looked over',
    'Fades, tips, glass, nocks, overlays, string track.',
  ),
  'final-looks': kind('Finish and markings looked over', 'Raking light, markings legible.'),
  'belongings-back': kind('Belongings back in the box', 'Ticked against the arrival list.'),
  'paid-or-terms': kind('Paid, or terms noted', 'Balance and how.', true),
  'safe-to-wrap': kind('Safe to wrap', 'By the finish sheet; since when.', true),
  'carrier-limits': kind('Inside the carrier limits', 'Box and weight against the carrier.', true),
  tracking: kind('Tracking number', 'Carrier and number.', true),
  'handed-to': kind('Handed to', 'Who took it over the counter.', true),
};

/** Entries worth offering while an order stands in a stage come from its gates; these always are. */
export const entryOutcomes = ['ok', 'not-ok'] as const;
export const entryOutcome = z.enum(entryOutcomes);
