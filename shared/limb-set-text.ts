import type { LimbSetFields } from './contract/limb-sets.ts';
import { decimal } from './measure.ts';
import { weightText } from './weight-text.ts';

function markedText(set: LimbSetFields): string {
  if (set.markedWeightLbf === null) return '';
  const on = set.riserName === '' ? '' : ` on ${set.riserName}`;
  const weight =
    set.markedDrawIn === null
      ? `${decimal(set.markedWeightLbf)}#, draw not marked,`
      : weightText(set.markedWeightLbf, set.markedDrawIn, set.markedDrawReference);
  return `marked ${weight}${on}`.replace(/,$/, '');
}

/** A pair of limbs in one line; its marked weight never without the riser it belongs to. */
export function limbSetText(set: LimbSetFields): string {
  return [
    set.name,
    set.upperSerial === '' ? '' : `upper ${set.upperSerial}`,
    set.lowerSerial === '' ? '' : `lower ${set.lowerSerial}`,
    set.amoLengthIn === null ? '' : `AMO ${decimal(set.amoLengthIn, 2)}"`,
    markedText(set),
  ]
    .filter((part) => part !== '')
    .join(', ');
}
