import { benchRecords } from './bench-records.ts';
import { benchWork } from './bench-work.ts';

/** The weight bench: what was taken off, looked at and read. */
export const bench = {
  ...benchRecords,
  ...benchWork,
};
