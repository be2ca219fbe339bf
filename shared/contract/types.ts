import type { InferContractRouterInputs, InferContractRouterOutputs } from '@orpc/contract';
import type { z } from '../zod.ts';
import type { Contract } from './index.ts';

type Parsed<T> = T extends { '~orpc': { inputSchema?: infer S } }
  ? NonNullable<S> extends z.ZodType
    ? z.output<NonNullable<S>>
    : undefined
  : { [K in keyof T]: Parsed<T[K]> };

/** Input of each procedure as its implementation receives it, after parsing. */
export type ContractInputs = Parsed<Contract>;
/** Input of each procedure as a client sends it. */
export type ContractRequests = InferContractRouterInputs<Contract>;
/** What each procedure answers to a client. */
export type ContractOutputs = InferContractRouterOutputs<Contract>;
