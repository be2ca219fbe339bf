import { oc } from '@orpc/contract';
import { type ErrorCode, errorCodes } from '../errors.ts';
import { commandId } from '../fields.ts';
import { type Role, roles } from '../people.ts';
import { z } from '../zod.ts';

/** Who may call a procedure. `anyone`: also before somebody has signed on. */
export type Audience = 'anyone' | readonly Role[];

export interface ProcedureMeta extends Record<string, unknown> {
  roles: Audience;
  /** A command writes, in one transaction; a query never does; `keep` stores drafts or makes files. */
  kind: 'query' | 'command' | 'keep';
}

const details = z.object({ details: z.record(z.string().max(200), z.string().max(1000)) });

type Errors = {
  [Code in ErrorCode]: { status: number; message: string; data: typeof details };
};
const errors = Object.fromEntries(
  Object.entries(errorCodes).map(([code, error]) => [code, { ...error, data: details }]),
) as Errors;

const base = oc.$meta<ProcedureMeta>({ roles: [], kind: 'query' }).errors(errors);

export const everyone: readonly Role[] = roles;
export const officeRoles: readonly Role[] = ['owner', 'office'];
export const ownerOnly: readonly Role[] = ['owner'];

export const query = (audience: Audience = everyone) =>
  base.meta({ roles: audience, kind: 'query' });
export const command = (audience: Audience = everyone) =>
  base.meta({ roles: audience, kind: 'command' });
export const keep = (audience: Audience = everyone) => base.meta({ roles: audience, kind: 'keep' });

/** Input of a command: the given fields and the id that makes a repeat harmless. */
export const commandInput = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject({ commandId, ...shape });

export const nothing = z.strictObject({}).optional();

/** Header that says who is working, by person id. Both doors carry it. */
export const personHeader = 'x-tillermark-person';
/** Header that says on which device, as a short name. */
export const deviceHeader = 'x-tillermark-device';
