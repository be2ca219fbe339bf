import { z } from '../../shared/zod.ts';
import { fieldErrors } from './field-errors.ts';

interface Procedure {
  '~orpc': { inputSchema?: unknown };
}

/** What the contract would refuse of a command's fields, by field path, before they are sent. */
export function inputErrors(procedure: Procedure, fields: object): Record<string, string> {
  const schema = procedure['~orpc'].inputSchema;
  return schema instanceof z.ZodType ? fieldErrors(schema, { ...fields, commandId: 'check' }) : {};
}
