import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { FinishRoom, SessionLook } from '../../../shared/contract/finish.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { sprayErrors } from './spray-errors.ts';
import { newSession, type SprayFields, sourcesOf, sprayInput, stockAt } from './spray-fields.ts';
import { useSprayLook } from './use-spray-look.ts';
import { instantFrom } from './when.ts';

function doneWords(bows: number, warnings: readonly string[]): string {
  const coated = `The coat is recorded on ${bows} ${bows === 1 ? 'bow' : 'bows'}.`;
  return [coated, ...warnings].join(' ');
}

/** What stands against the session: nothing is known while a field is wrong. */
const unknown: Pick<SessionLook, 'session' | 'orders'> = { session: [], orders: [] };

interface Began {
  room: FinishRoom;
  nowMs: number;
  batchId: string | null;
  onDone: (words: string) => void;
}

/** A session while it is put together: its fields, what it can draw on and what stands against it. */
export function useSpray({ room, nowMs, batchId, onDone }: Began) {
  const [fields, setFields] = useState(() => newSession(room, batchId, nowMs));
  const [isTried, setTried] = useState(false);
  const at = instantFrom(fields.at);
  const batches = useQuery(orpc.finish.batches.queryOptions());
  const sources = sourcesOf(stockAt(room, batches.data ?? [], at));
  const source = sources.find(({ key }) => key === fields.source);
  const { look, isBusy, error, again } = useSprayLook(fields, source);
  const command = useCommand(api.finish.spray, {
    onDone: (result) => {
      if (result.outcome === 'recorded') onDone(doneWords(result.coatIds.length, result.warnings));
      else again();
    },
  });
  const wrong = sprayErrors(fields, source);
  return {
    fields,
    set: (part: Partial<SprayFields>) => setFields({ ...fields, ...part }),
    sources,
    source,
    /** The moment it is about, ms. */
    momentMs: at === null ? nowMs : Date.parse(at),
    look,
    isBusy,
    /** Why the look could not be read. */
    error,
    again,
    against: look ?? unknown,
    command,
    errors: isTried ? { ...command.details, ...wrong } : {},
    send: (reason?: string) => {
      setTried(true);
      if (Object.keys(wrong).length > 0) return;
      const override = reason === undefined ? {} : { override: { reason } };
      void command.run({ ...sprayInput(fields, source), ...override });
    },
  };
}
