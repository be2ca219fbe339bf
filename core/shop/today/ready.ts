import type { TodayItem } from '../../../shared/contract/today.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import { missingAt } from '../gates/gates.ts';
import type { Requirement } from '../gates/requirement.ts';
import { gateTable } from '../gates/table.ts';
import { about, type TodayOrder } from './item.ts';

/**
 * What the next gate asks for that the gate before did not. An open gate is news only where there
 * is something of the kind: one that asks for nothing, or for what was asked already, says nothing
 * about the work.
 */
function newlyAsked(stage: Stage, next: Stage): readonly Requirement[] {
  const asked = new Set(gateTable[stage].map((requirement) => requirement.item));
  return gateTable[next].filter((requirement) => !asked.has(requirement.item));
}

/** An order for whose next stage nothing is missing. */
export function readyToGoOn(order: TodayOrder, next: Stage | null, facts: GateFacts): TodayItem[] {
  if (next === null || order.held) return [];
  const isNews = newlyAsked(order.stage, next).some((requirement) => requirement.applies(facts));
  if (!isNews || missingAt(next, facts).length > 0) return [];
  return [
    about(order, {
      kind: 'ready',
      group: 'ready',
      what: `Nothing is missing for "${stageLabels[next]}".`,
      dueOn: order.promisedOn,
      since: order.stageSince,
    }),
  ];
}
