import { expect, test } from 'vitest';
import type { z } from 'zod';
import { roles } from '../../shared/people.ts';
import { procedures } from '../support/contract-walk.ts';
import { childrenOf, defOf } from '../support/zod-def.ts';

function unboundedStrings(schema: z.ZodType, at: string): string[] {
  const def = defOf(schema);
  if (def.type === 'string') {
    return (schema as z.ZodString).maxLength === null ? [at] : [];
  }
  return childrenOf(schema).flatMap(([key, child]) => unboundedStrings(child, `${at}.${key}`));
}

test('the contract has procedures to check', () => {
  expect(procedures.length).toBeGreaterThan(40);
});

test.each(procedures)('$name declares who may call it, its input and its output', (procedure) => {
  const { meta } = procedure;
  expect(meta.roles === 'anyone' || meta.roles.length > 0).toBe(true);
  if (meta.roles !== 'anyone') expect(roles).toEqual(expect.arrayContaining([...meta.roles]));
  expect(procedure.input).toBeDefined();
  expect(procedure.output).toBeDefined();
});

test.each(procedures)('$name bounds every string it takes', (procedure) => {
  expect(procedure.input && unboundedStrings(procedure.input, 'input')).toEqual([]);
});

test.each(procedures.filter((p) => p.meta.kind === 'command'))(
  '$name can be repeated without harm: it takes a commandId',
  (procedure) => {
    const shape = procedure.input && defOf(procedure.input).shape;
    expect(Object.keys(shape ?? {})).toContain('commandId');
  },
);
