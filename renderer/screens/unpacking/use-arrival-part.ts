import { useEffect, useRef, useState } from 'react';
import type { ArrivalFields } from '../../../shared/contract/arrival.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { today } from '../../parts/days.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { useOrder } from '../orders/order-screen.tsx';
import { useOrderCommand } from '../orders/use-order-command.ts';
import { arrivalFieldsOf, clashesOf, isUnsaved } from './arrival-fields.ts';

type Fields = Partial<ArrivalFields>;

interface Typing {
  /** What was written when the typing began; null while nothing is typed. */
  base: ArrivalFields | null;
  typed: Fields;
}

const nothingTyped: Typing = { base: null, typed: {} };

/**
 * One part of the table: what is written of it and what is typed over that. Saving sends the whole
 * record with only this part changed, so that nobody's other part is lost; typed text stays when
 * somebody else was faster, and what they wrote in the same field is told.
 */
export function useArrivalPart() {
  const { order } = useOrder();
  const { arrival, card } = order;
  const [{ base, typed }, setTyping] = useState(nothingTyped);
  const [isTried, setTried] = useState(false);
  const [saved, setSaved] = useState<{ rowVersion: number; typed: Fields } | null>(null);
  const sending = useRef<Fields>({});
  const stored = arrivalFieldsOf(arrival, today());
  const value = { ...stored, ...typed };
  const version = arrival?.rowVersion ?? 0;

  const command = useOrderCommand(api.arrival.record, ({ rowVersion }) =>
    setSaved({ rowVersion, typed: sending.current }),
  );
  useEffect(() => {
    // The page shows the saved record now: what was typed has done its work, unless it went on.
    if (saved === null || version < saved.rowVersion) return;
    setTyping((now) => (now.typed === saved.typed ? nothingTyped : now));
    setSaved(null);
  }, [version, saved]);

  const inputOf = (part: Fields) => ({
    orderId: card.id,
    rowVersion: arrival?.rowVersion ?? null,
    ...value,
    ...part,
  });
  const wrongOf = (part: Fields) => inputErrors(contract.arrival.record, inputOf(part));
  const send = (part: Fields) => {
    setTried(true);
    if (Object.keys(wrongOf(part)).length > 0) return;
    sending.current = typed;
    void command.run(inputOf(part));
  };
  return {
    value,
    stored,
    set: (part: Fields) =>
      setTyping((now) => ({ base: now.base ?? stored, typed: { ...now.typed, ...part } })),
    errors: isTried ? { ...command.details, ...wrongOf({}) } : {},
    command,
    isUnsaved: isUnsaved(stored, typed),
    clashes: base === null ? [] : clashesOf(base, stored, typed),
    /** Leaves what is written and drops what was typed here. */
    dropTyped: () => setTyping(nothingTyped),
    save: () => send({}),
    /** Saves one more answer with a single tap. It shows only once it is kept. */
    saveWith: send,
  };
}

export type ArrivalPart = ReturnType<typeof useArrivalPart>;
