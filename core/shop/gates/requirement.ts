import { type ConsentKind, consentLabels } from '../../../shared/consents.ts';
import { type EntryItem, entryKinds } from '../../../shared/entries.ts';
import type { MissingItem, Section } from '../../../shared/gates.ts';
import type { FinishState, RecordState } from './finish-state.ts';
import type { GateFacts } from './gate-facts.ts';

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
 * What the finish room's records answer. Where they say nothing, a dated entry of a shop that
 * worked before them still stands; so does one written after the record that stands against it.
 * A coat about to be recorded answers by its own records alone.
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
    const entry = facts.finish.proposed ? null : facts.entry(item);
    if (record.state === 'trouble') {
      const later = entry?.outcome === 'ok' && entry.recordedAt > record.at;
      return later ? null : record.sentence;
    }
    if (entry === null) return sentence;
    return entry.outcome === 'ok' ? null : `${entryKinds[item].label}: recorded as not in order.`;
  };
  return needs(item, 'finish', missing, { ...options, opens: item });
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
