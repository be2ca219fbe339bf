import { type FinalCheckItem, finalCheckItems, finalChecks } from './final-checklist.ts';
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
  'findings-told',
  'carrier-limits',
  'tracking',
  'handed-to',
  ...finalCheckItems,
] as const;
export const entryItem = z.enum(entryItems);
export type EntryItem = z.infer<typeof entryItem>;

export interface EntryKind {
  label: string;
  /** What the note should hold. */
  hint: string;
  noteRequired: boolean;
  /** Gate passed before this entry may be written, or was written while it still could be. */
  step: Gate | null;
  /** Not written as an entry by hand (any more); says where the same is recorded. */
  retired: string | null;
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
  retired: null,
});

const retired = (label: string, where: string, step: Gate | null = null): EntryKind => ({
  label,
  hint: where,
  noteRequired: false,
  step,
  retired: where,
});

const unpacking = 'This is recorded at the unpacking table.';
const bench = 'This is recorded at the weight bench.';
const finishLog = 'This is recorded in the finish log of the order.';
const finishRoom = 'This is recorded in the finish room.';
const lastCoat = 'This is counted from the last coat recorded in the finish room.';
const finalCheck = 'This is recorded in the final check.';
const shipping = 'This is recorded with the parcel.';

/** Recorded all together, behind the final check's own refusals. */
const checkKinds = Object.fromEntries(
  finalChecks.map(({ item, label, hint }) => [item, { ...retired(label, finalCheck), hint }]),
) as Record<FinalCheckItem, EntryKind>;

export const entryKinds: Record<EntryItem, EntryKind> = {
  'arrived-on': retired('Box opened', unpacking),
  condition: retired('Condition on arrival', unpacking),
  belongings: retired('Belongings', unpacking),
  'arrival-check': retired('Arrival check', unpacking),
  'target-feasible': kind('Target can be reached', 'Why this limb can give that much.', true),
  stations: kind(
    'Limb widths and thicknesses',
    'Measured, or "unknown section, wider band accepted".',
    true,
  ),
  'plan-accepted': kind('Weight plan by hand', 'Method, stop weight, who decided.', true),
  'bare-glass': kind('Glass bare or no thinning planned', 'Which of the two.', true),
  removal: retired('Bite taken', bench),
  'glass-check': retired('Glass check', bench),
  'tiller-read': retired('Tiller and string track', bench),
  'last-grit': retired('Last grit', finishLog),
  'finish-system': retired('Finish chosen', finishLog),
  air: retired('Air in the finish room', finishRoom),
  'lettering-applied': kind('Lettering applied', 'Where, by whom.', false, 'lettering'),
  'lettering-dry': kind('Lettering dry', 'How it was tried.'),
  'first-clear': retired('First clear coat', finishRoom, 'first-clear'),
  'pot-life': retired('Inside pot life', finishRoom),
  'lots-in-date': retired('Lots in date', finishRoom),
  'recoat-window': retired('Recoat window or scuff', finishRoom),
  coat: retired('Coat', finishRoom, 'coat'),
  'string-and-flex': retired('Time to string and flex passed', lastCoat),
  'final-safety': retired('Flexed twenty times and looked over', finalCheck),
  'final-looks': retired('Finish and markings looked over', finalCheck),
  'belongings-back': retired('Belongings back in the box', finalCheck),
  'paid-or-terms': kind('Paid, or terms noted', 'Balance and how.', true),
  'safe-to-wrap': retired('Safe to wrap', lastCoat),
  'findings-told': kind(
    'Customer told what was found',
    'When, how, and what was said of each finding.',
    true,
  ),
  'carrier-limits': retired('Inside the carrier limits', shipping),
  tracking: retired('Tracking number', shipping),
  'handed-to': kind('Handed to', 'Who took it over the counter.', true),
  ...checkKinds,
};

/** Entries worth offering while an order stands in a stage come from its gates; these always are. */
export const entryOutcomes = ['ok', 'not-ok'] as const;
export const entryOutcome = z.enum(entryOutcomes);
