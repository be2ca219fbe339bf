/**
 * What the records say of one thing a gate asks for. `none`: they say nothing. `at`: instant of
 * the record that stands against it.
 */
export type RecordState =
  | { state: 'none' }
  | { state: 'ok' }
  | { state: 'trouble'; sentence: string; at: string };

export const stateOf = (sentence: string | null, at: string): RecordState =>
  sentence === null ? { state: 'ok' } : { state: 'trouble', sentence, at };
