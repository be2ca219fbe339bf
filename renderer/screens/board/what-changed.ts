import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { goingHomeText } from '../../../shared/going-home.ts';
import { stageLabels } from '../../../shared/stages.ts';
import { fullDay } from '../../parts/days.ts';

/** What somebody else changed between two readings of a card, one sentence each. */
export function whatChanged(before: OrderCard, after: OrderCard | undefined): string[] {
  if (after === undefined) return ['It is no longer among the orders in work.'];
  const changes: string[] = [];
  if (before.stage !== after.stage) {
    changes.push(`It went from "${stageLabels[before.stage]}" to "${stageLabels[after.stage]}".`);
  }
  if (before.hold === null && after.hold !== null) {
    changes.push(`It was put on hold: ${after.hold.reason}`);
  }
  if (before.hold !== null && after.hold === null) changes.push('It is no longer on hold.');
  if (before.goingHome !== after.goingHome) {
    changes.push(
      after.goingHome === null
        ? 'It was taken up again.'
        : `It is ${goingHomeText(after.goingHome)}.`,
    );
  }
  if (before.promisedOn !== after.promisedOn) {
    changes.push(
      after.promisedOn === null
        ? 'It has no promised date any more.'
        : `It is promised for ${fullDay(after.promisedOn)}.`,
    );
  }
  if (before.services.join() !== after.services.join()) changes.push('Its services changed.');
  if (before.bowLine !== after.bowLine) changes.push(`Its bow: ${after.bowLine}.`);
  return changes.length === 0 ? ['Something on the order page changed.'] : changes;
}
