import type { z } from 'zod';
import { defOf } from './zod-def.ts';

/** Ids of records that exist, by the name of the field or of the procedure's room. */
export type KnownIds = Record<string, string>;

function stringFor(schema: z.ZodType, key: string, known: KnownIds): string {
  const named = known[key];
  if (named !== undefined) return named;
  for (const candidate of [
    'A plain line of words',
    '2026-03-02',
    '2026-03-02T09:00:00.000Z',
    'AB',
    'a'.repeat(64),
  ]) {
    if (schema.safeParse(candidate).success) return candidate;
  }
  throw new Error(`no sample for the string ${key}: teach this generator`);
}

function numberFor(schema: z.ZodType, key: string): number {
  for (const candidate of key === 'rowVersion' ? [1] : [28, 1, 7, 0, 0.5, 40, 150, 0.1]) {
    if (schema.safeParse(candidate).success) return candidate;
  }
  throw new Error(`no sample for the number ${key}: teach this generator`);
}

/** A valid input made from the schema alone. Refuses a kind of schema it does not know, so none is skipped. */
export function sampleOf(schema: z.ZodType, key: string, known: KnownIds): unknown {
  const def = defOf(schema);
  switch (def.type) {
    case 'object':
      return Object.fromEntries(
        Object.entries(def.shape ?? {})
          .map(([name, child]) => [name, sampleOf(child, name, known)] as const)
          .filter(([, value]) => value !== undefined),
      );
    case 'string':
      return stringFor(schema, key, known);
    case 'number':
      return numberFor(schema, key);
    case 'boolean':
      return true;
    case 'enum':
      return Object.values(def.entries ?? {})[0];
    case 'literal':
      return def.values?.[0];
    case 'array': {
      const item = def.element && sampleOf(def.element, key, known);
      const few = [2, 3, 1, 0].map((length) => Array.from({ length }, () => item));
      return few.find((list) => schema.safeParse(list).success) ?? [item];
    }
    case 'union': {
      const options = (def.options ?? []).map((option) => sampleOf(option, key, known));
      return options[0];
    }
    case 'optional':
      return undefined;
    case 'nullable':
      return def.innerType && known[key] !== undefined ? sampleOf(def.innerType, key, known) : null;
    case 'file':
      return new File(['A plain line of words'], 'note.txt', { type: 'text/plain' });
    case 'record':
      return { customerName: 'A plain line of words' };
    default:
      throw new Error(`no sample for a ${def.type} at ${key}: teach this generator`);
  }
}

export interface Leaf {
  path: string[];
  type: string;
}

/** Every place of the input that takes a single value, optional and nullable ones too. */
export function leavesOf(schema: z.ZodType, path: string[] = []): Leaf[] {
  const def = defOf(schema);
  if (def.type === 'object') {
    return Object.entries(def.shape ?? {}).flatMap(([key, child]) =>
      leavesOf(child, [...path, key]),
    );
  }
  if ((def.type === 'optional' || def.type === 'nullable') && def.innerType) {
    return leavesOf(def.innerType, path);
  }
  if (def.type === 'array' && def.element) return leavesOf(def.element, [...path, '0']);
  if (def.type === 'union')
    return (def.options ?? []).slice(0, 1).flatMap((option) => leavesOf(option, path));
  return [{ path, type: def.type }];
}

/** The same input with one place replaced; the way there is made where it is missing. */
export function withValue(input: unknown, path: readonly string[], value: unknown): unknown {
  const [head, ...rest] = path;
  if (head === undefined) return value;
  if (/^\d+$/.test(head)) {
    const list = Array.isArray(input) && input.length > 0 ? [...input] : [undefined];
    list[Number(head)] = withValue(list[Number(head)], rest, value);
    return list;
  }
  const base = typeof input === 'object' && input !== null && !Array.isArray(input) ? input : {};
  return { ...base, [head]: withValue((base as Record<string, unknown>)[head], rest, value) };
}
