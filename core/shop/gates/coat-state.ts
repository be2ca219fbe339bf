import type { RecordState } from './record-state.ts';

/** What a coat that is about to be recorded says of itself: its cup, its lots, its hour. */
export interface CoatState {
  potLife: RecordState;
  lots: RecordState;
  window: RecordState;
  air: RecordState;
  system: RecordState;
}

const none = { state: 'none' } as const;

/** No coat is about to be recorded. Its gate stays shut: nothing answers what it asks. */
export const noCoat: CoatState = {
  potLife: none,
  lots: none,
  window: none,
  air: none,
  system: none,
};
