import type { BenchLogLine } from '../../../shared/contract/bench-work.ts';
import type { Changed } from '../../../shared/fields.ts';
import { api } from '../../api/client.ts';

export interface StrikeInput {
  commandId: string;
  kind: BenchLogLine['kind'];
  id: string;
  rowVersion: number;
  reason: string;
}

/** Strikes out a line of the bench's log, each kind by its own command. */
export function strikeOut({ kind, ...input }: StrikeInput): Promise<Changed> {
  switch (kind) {
    case 'reading':
      return api.readings.strikeOut(input);
    case 'removal':
      return api.bench.strikeOutRemoval(input);
    case 'glass-check':
      return api.bench.strikeOutGlassCheck(input);
    case 'tiller':
      return api.bench.strikeOutTiller(input);
    case 'surprise':
      throw new Error('answers go with their reading');
  }
}
