import { createContext, type ReactNode, useContext } from 'react';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';

/** What every part of the desk works on. */
export interface Desk {
  start: PlanStart;
  input: PlanInput;
  change(input: PlanInput): void;
  /** A slider moves: answers come fast and leave out what takes long. */
  setSliding(isSliding: boolean): void;
  /** What is wrong, by field path. */
  errors: Record<string, string>;
}

const Context = createContext<Desk | null>(null);

export function useDesk(): Desk {
  const desk = useContext(Context);
  if (desk === null) throw new Error('useDesk belongs inside the weight bench');
  return desk;
}

export function DeskProvider({ desk, children }: { desk: Desk; children: ReactNode }) {
  return <Context value={desk}>{children}</Context>;
}
