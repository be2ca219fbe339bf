import type { Batch } from '../../../shared/contract/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { runningText } from '../../frame/clock-strip/clock-text.ts';
import { momentText } from '../../parts/days.ts';
import type { MarkKind } from '../../parts/mark.tsx';
import { temperatureText } from './temperature-text.ts';

/** Where a batch stands at this moment, whatever it stood at when it was read. */
export function batchState(batch: Batch, nowMs: number): Batch['state'] {
  if (batch.discardedAt !== null) return 'discarded';
  if (nowMs >= Date.parse(batch.usableUntil)) return 'past';
  return nowMs < Date.parse(batch.usableFrom) ? 'standing' : 'usable';
}

/** From here on it is better to finish what is in the gun, ms. */
const nearMs = 15 * 60_000;

export interface BatchWords {
  kind: MarkKind;
  text: string;
}

/** Its clock in words, with the shape beside them. */
export function batchWords(batch: Batch, nowMs: number): BatchWords {
  const leftMs = Date.parse(batch.usableUntil) - nowMs;
  switch (batchState(batch, nowMs)) {
    case 'discarded':
      return { kind: 'attention', text: `Discarded: ${batch.discardedWhy}` };
    case 'past':
      return {
        kind: 'stop',
        text: `Pot life past since ${momentText(batch.usableUntil)}: do not use it.`,
      };
    case 'standing': {
      const wait = runningText(Date.parse(batch.usableFrom) - nowMs);
      return { kind: 'attention', text: `Let it stand: usable in ${wait}.` };
    }
    case 'usable':
      return {
        kind: leftMs <= nearMs ? 'attention' : 'done',
        text: `Usable for ${runningText(leftMs)}.`,
      };
  }
}

/** `41.2 g resin, 10.4 g hardener`: what was weighed, or poured where nothing was weighed. */
export function pouredText(batch: Batch): string {
  const parts = [
    ['resin', batch.resinG, batch.resinMl],
    ['hardener', batch.hardenerG, batch.hardenerMl],
    ['thinner', batch.thinnerG, batch.thinnerMl],
  ] as const;
  return parts
    .flatMap(([name, g, ml]) => {
      if (g !== null && g > 0) return [`${decimal(g)} g ${name}`];
      return ml !== null && ml > 0 ? [`${decimal(ml)} mL ${name}`] : [];
    })
    .join(', ');
}

/** Who mixed it, when and how warm. */
export const mixedText = ({ mixedAt, personName, mixF }: Batch) =>
  `Mixed ${momentText(mixedAt)} by ${personName}, at ${temperatureText(mixF)}`;
