/** A copy without the given keys: the fields of a record without its id, say. */
export function omit<T extends object, K extends keyof T>(from: T, ...keys: K[]): Omit<T, K> {
  const rest = { ...from };
  for (const key of keys) delete rest[key];
  return rest;
}
