import { type AnyContractProcedure, isContractProcedure } from '@orpc/contract';
import type { z } from 'zod';
import type { ProcedureMeta } from '../../shared/contract/base.ts';
import { contract } from '../../shared/contract/index.ts';

export interface WalkedProcedure {
  path: string[];
  name: string;
  meta: ProcedureMeta;
  input: z.ZodType | undefined;
  output: z.ZodType | undefined;
}

function walk(node: unknown, path: string[]): WalkedProcedure[] {
  if (isContractProcedure(node as AnyContractProcedure)) {
    const def = (node as AnyContractProcedure)['~orpc'];
    return [
      {
        path,
        name: path.join('.'),
        meta: def.meta as ProcedureMeta,
        input: def.inputSchema as z.ZodType | undefined,
        output: def.outputSchema as z.ZodType | undefined,
      },
    ];
  }
  return Object.entries(node as object).flatMap(([key, child]) => walk(child, [...path, key]));
}

/** Every procedure of the contract, found by walking it: a new one is covered by itself. */
export const procedures: readonly WalkedProcedure[] = walk(contract, []);
