import { ShopError } from '../../../shared/errors.ts';
import type { Gate, MissingItem } from '../../../shared/gates.ts';
import type { Role } from '../../../shared/people.ts';
import type { GateFacts } from './gate-facts.ts';
import { gateTable } from './table.ts';

/** Everything one gate still needs, in the order it is usually done. Empty means open. */
export function missingAt(gate: Gate, facts: GateFacts): MissingItem[] {
  return gateTable[gate].flatMap((requirement) => {
    if (!requirement.applies(facts)) return [];
    const sentence = requirement.missing(facts);
    if (sentence === null) return [];
    return [
      {
        item: requirement.item,
        gate,
        // Sentences quote what was typed, which may be long or run over several lines.
        sentence: sentence.replaceAll(/\p{Cc}+/gu, ' ').slice(0, 400),
        section: requirement.section,
        opens: requirement.opens,
        override: requirement.override(facts),
      },
    ];
  });
}

export type Verdict =
  | { open: true; overridden: MissingItem[] }
  | { open: false; missing: MissingItem[] };

/**
 * Whether the gates let an order pass. An override covers only what the table allows; one item
 * that nobody may override keeps the gate shut for the owner too.
 * @throws ShopError NOT_ALLOWED when somebody other than the owner overrides.
 */
export function passGates(
  gates: readonly Gate[],
  facts: GateFacts,
  role: Role,
  override: { reason: string } | undefined,
): Verdict {
  const missing = gates.flatMap((gate) => missingAt(gate, facts));
  if (missing.length === 0) return { open: true, overridden: [] };
  if (override === undefined) return { open: false, missing };
  if (role !== 'owner') {
    throw new ShopError('NOT_ALLOWED', 'Only the owner lets an order pass with something missing.');
  }
  const barred = missing.filter((item) => item.override === 'never');
  return barred.length > 0 ? { open: false, missing } : { open: true, overridden: missing };
}
