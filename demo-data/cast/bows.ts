import { hybrids } from './hybrids.ts';
import { longbows } from './longbows.ts';
import { type DemoBow, makeBow } from './make-bow.ts';
import { recurves } from './recurves.ts';

/** Forty-five bows: of customers, and the shop's own. */
export const demoBows: ReadonlyMap<string, DemoBow> = new Map(
  Object.entries({ ...longbows, ...hybrids, ...recurves }).map(([key, sketch]) => [
    key,
    makeBow(key, sketch),
  ]),
);
