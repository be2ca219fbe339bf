import { implement } from '@orpc/server';
import { deviceHeader, personHeader } from '../../shared/contract/base.ts';
import { contract } from '../../shared/contract/index.ts';
import { ShopError } from '../../shared/errors.ts';
import { activePerson } from '../shop/setup/people.ts';
import type { ShopContext } from '../storage/context.ts';
import type { Core } from './core.ts';
import type { DoorContext } from './door-context.ts';

const plain = /^[\w .-]{1,60}$/;

function header(headers: Headers | undefined, name: string): string {
  const value = headers?.get(name) ?? '';
  return plain.test(value) ? value : '';
}

async function actorOf(core: Core, personId: string, device: string): Promise<ShopContext | null> {
  if (personId === '') return null;
  const shop = core.shop();
  const person = await activePerson(shop, personId);
  if (person === null) return null;
  const actor = { personId: person.id, name: person.name, role: person.role, device };
  return { ...shop, actor };
}

/** The contract, with who-may-call enforced in this one place for both doors. */
export const guarded = implement(contract)
  .$context<DoorContext>()
  .use(async ({ context, procedure, next }) => {
    const { roles } = procedure['~orpc'].meta;
    const device = header(context.reqHeaders, deviceHeader) || 'unnamed device';
    if (roles === 'anyone') {
      return next({ context: { device, signedOn: refuseUnsigned } });
    }
    const ctx = await actorOf(context.core, header(context.reqHeaders, personHeader), device);
    if (ctx === null) return refuseUnsigned();
    if (!roles.includes(ctx.actor.role)) {
      throw new ShopError(
        'NOT_ALLOWED',
        `This is for ${roles.join(' or ')}; ${ctx.actor.name} works as ${ctx.actor.role}.`,
      );
    }
    return next({ context: { device, signedOn: () => ctx } });
  });

function refuseUnsigned(): never {
  throw new ShopError('NOT_SIGNED_ON', 'Choose who is working first.');
}
