import type { z } from 'zod';

/** The parts of a zod definition that the tests look into. */
export interface Def {
  type: string;
  innerType?: z.ZodType;
  element?: z.ZodType;
  keyType?: z.ZodType;
  valueType?: z.ZodType;
  options?: z.ZodType[];
  shape?: Record<string, z.ZodType>;
  entries?: Record<string, string>;
  values?: unknown[];
  in?: z.ZodType;
}

export function defOf(schema: z.ZodType): Def {
  return schema._zod.def as unknown as Def;
}

export function childrenOf(schema: z.ZodType): [string, z.ZodType][] {
  const def = defOf(schema);
  const children: [string, z.ZodType | undefined][] = [
    ['?', def.innerType],
    ['[]', def.element],
    ['{key}', def.keyType],
    ['{value}', def.valueType],
    ['in', def.in],
    ...(def.options ?? []).map((option, i): [string, z.ZodType] => [`|${i}`, option]),
    ...Object.entries(def.shape ?? {}),
  ];
  return children.filter((child): child is [string, z.ZodType] => child[1] !== undefined);
}
