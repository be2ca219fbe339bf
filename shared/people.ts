import { id, requiredLine, rowVersion } from './fields.ts';
import { z } from './zod.ts';

/** Owner decides and overrides; office talks to customers; bench works on bows. */
export const roles = ['owner', 'office', 'bench'] as const;
export const role = z.enum(roles);
export type Role = z.infer<typeof role>;

export const person = z.object({
  id,
  name: requiredLine(120),
  initials: requiredLine(4),
  role,
  active: z.boolean(),
  rowVersion,
});
export type Person = z.infer<typeof person>;
