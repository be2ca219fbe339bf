import { type StringTrack, stringTrack } from '../../../shared/bench.ts';
import { between } from '../../../shared/fields.ts';
import { z } from '../../../shared/zod.ts';
import { tillerSaid } from './tiller-words.ts';

/** A tiller reading as far as it was given. */
export const tillerEntry = z.strictObject({
  tillerIn: between(-2, 2, 'A tiller is between -2 and 2 inches.'),
  /** The number was given or let stand; a track is asked for next. */
  isTaken: z.boolean(),
  upperTrack: stringTrack.nullable(),
  lowerTrack: stringTrack.nullable(),
  isReading: z.boolean(),
});
export type TillerEntry = z.infer<typeof tillerEntry>;

export type TillerField = 'tiller' | 'upperTrack' | 'lowerTrack' | 'done';

/** What the keys go to. */
export function waitingField(entry: TillerEntry): TillerField {
  if (!entry.isTaken) return 'tiller';
  if (entry.upperTrack === null) return 'upperTrack';
  return entry.lowerTrack === null ? 'lowerTrack' : 'done';
}

const trackWords: Record<StringTrack, string> = {
  left: 'left of the middle',
  centre: 'in the middle',
  right: 'right of the middle',
};

export function tillerReadText({ tillerIn, upperTrack, lowerTrack }: TillerEntry): string {
  const tracks =
    upperTrack === null || lowerTrack === null
      ? []
      : [
          `String ${trackWords[upperTrack]} on the upper, ${trackWords[lowerTrack]} on the lower limb.`,
        ];
  return [`${tillerSaid(tillerIn)}${tillerIn === 0 ? '' : ' than lower'}.`, ...tracks].join(' ');
}
