import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { goingHomeLine } from '../../../shared/going-home.ts';
import { decimal } from '../../../shared/measure.ts';
import type { MarkKind } from '../../parts/mark.tsx';

export interface Holding {
  kind: MarkKind;
  text: string;
  /** Where it is put right, where that is one place. */
  href?: string;
}

const count = (n: number, one: string, many: string) => (n === 1 ? `1 ${one}` : `${n} ${many}`);

/** What keeps an order from going on, worst first. */
export function holdingOf(card: OrderCard): Holding[] {
  const all: Holding[] = [];
  if (card.openStops > 0) {
    const findings = count(card.openStops, 'stop finding', 'stop findings');
    all.push({ kind: 'stop', text: `Do not draw: ${findings}` });
  }
  if (card.underTarget !== null) {
    const { byLbf, isSanded } = card.underTarget;
    all.push({
      kind: 'stop',
      text: `${decimal(byLbf, 2)} lb under its target: take nothing more off`,
      href: `/orders/${card.id}?open=${isSanded ? 'undershoot' : 'weighings:after-sanding'}`,
    });
  }
  if (card.goingHome !== null) {
    all.push({ kind: 'attention', text: goingHomeLine(card.goingHome) });
  }
  if (card.hold !== null) all.push({ kind: 'attention', text: `On hold: ${card.hold.reason}` });
  if (card.waitingConsents > 0) {
    const answers = count(card.waitingConsents, 'consent', 'consents');
    all.push({ kind: 'attention', text: `Waiting: ${answers}` });
  }
  return all;
}
