import { type ConsentKind, consentLabels } from '../../../shared/consents.ts';
import { type EntryItem, entryKinds } from '../../../shared/entries.ts';
import type { MissingItem, Section } from '../../../shared/gates.ts';
import type { CoatState } from './coat-state.ts';
import type { FinishState } from './finish-state.ts';
import type { GateFacts } from './gate-facts.ts';
import type { RecordState } from './record-state.ts';

/** One row of the gate table. */
export interface Requirement {
  item: string;
  /** Whether this order needs it at all. */
  applies(facts: GateFacts): boolean;
  /** One sentence saying what is missing, or null when it is there. */
  missing(facts: GateFacts): string | null;
  section: Section;
  opens: string | null;
  override(facts: GateFacts): MissingItem['override'];
}

type Options = {
  when?: (facts: GateFacts) => boolean;
  override?: MissingItem['override'];
  item?: string;
  /** Counts only when it was written after the last bite. */
  sinceLastBite?: boolean;
};

const always = () => true;

/** A dated entry that must be there and say "in order". */
export function needsEntry(item: EntryItem, sentence: string, options: Options = {}): Requirement {
  return {
    item: options.item ?? item,
    applies: options.when ?? always,
    missing: (facts) => {
      const entry = facts.entry(item);
      if (entry === null) return sentence;
      const bite = options.sinceLastBite === true ? facts.lastRemovalAt : null;
      if (bite !== null && entry.recordedAt <= bite) return sentence;
      return entry.outcome === 'ok' ? null : `${entryKinds[item].label}: recorded as not in order.`;
    },
    section: 'bench-log',
    opens: item,
    override: () => options.override ?? 'owner',
  };
}

/**
 * What the finish room's records answer, and what they say stands. Before there were such records
 * a shop wrote a dated entry instead; nobody can write one any more (`entryKinds`). One that is
 * there still counts where no record says anything, so that a bow that was in work then goes on,
 * and where it was written after what the record that stands against it tells of.
 */
export function needsRecord(
  item: EntryItem,
  of: (finish: FinishState) => RecordState,
  sentence: string,
  options: Options = {},
): Requirement {
  const missing = (facts: GateFacts): string | null => {
    const record = of(facts.finish);
    if (record.state === 'ok') return null;
    const entry = facts.entry(item);
    if (record.state === 'trouble') {
      const later = entry?.outcome === 'ok' && entry.recordedAt > record.at;
      return later ? null : record.sentence;
    }
    if (entry === null) return sentence;
    return entry.outcome === 'ok' ? null : `${entryKinds[item].label}: recorded as not in order.`;
  };
  return needs(item, 'finish', missing, { ...options, opens: item });
}

/** What a coat that is about to be recorded answers by itself, whatever was noted before. */
export function needsOfCoat(
  item: EntryItem,
  of: (coat: CoatState) => RecordState,
  sentence: string,
): Requirement {
  const missing = ({ coat }: GateFacts): string | null => {
    const record = of(coat);
    if (record.state === 'ok') return null;
    return record.state === 'none' ? sentence : record.sentence;
  };
  return needs(item, 'finish', missing, { opens: item });
}

const consentTrouble = {
  none: 'has not been asked for',
  waiting: 'has been asked for and is not answered; no reply never means yes',
  declined: 'was declined by the customer',
  withdrawn: 'was withdrawn by the customer',
  outdated: 'no longer fits: what it referred to has changed. Ask again',
};

/** A customer's consent to the exact text. Nobody can override one; a shop's own bow has nobody to ask. */
export function needsConsent(
  kind: ConsentKind,
  when: (facts: GateFacts) => boolean = always,
): Requirement {
  return {
    item: kind,
    applies: (facts) => !facts.shopsOwn && when(facts),
    missing: (facts) => {
      const state = facts.consent(kind);
      return state === 'granted' ? null : `${consentLabels[kind]} ${consentTrouble[state]}.`;
    },
    section: 'consents',
    opens: kind,
    override: () => 'never',
  };
}

/** Anything else the records can answer. */
export function needs(
  item: string,
  section: Section,
  missing: (facts: GateFacts) => string | null,
  options: Options & { opens?: string } = {},
): Requirement {
  return {
    item,
    applies: options.when ?? always,
    missing,
    section,
    opens: options.opens ?? null,
    override: () => options.override ?? 'owner',
  };
}
