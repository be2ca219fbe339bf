export type Flag = 0 | 1;

/** Every row a command writes carries an id and a version that grows with each change. */
export interface Row {
  id: string;
  row_version: number;
}
