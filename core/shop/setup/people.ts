import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { Person } from '../../../shared/people.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { PersonRow } from '../../storage/tables.ts';
import { changedOf } from '../record.ts';

function personOf(row: PersonRow): Person {
  return {
    id: row.id,
    name: row.name,
    initials: row.initials,
    role: row.role,
    active: row.active === 1,
    rowVersion: row.row_version,
  };
}

export async function listPeople(shop: OpenShop): Promise<Person[]> {
  const rows = await shop.read
    .selectFrom('person')
    .selectAll()
    .orderBy('active', 'desc')
    .orderBy('name')
    .limit(200)
    .execute();
  return rows.map(personOf);
}

/** The working person of a call; none when the id is unknown or the person has left. */
export async function activePerson(shop: OpenShop, id: string): Promise<Person | null> {
  const row = await shop.read
    .selectFrom('person')
    .selectAll()
    .where('id', '=', id)
    .where('active', '=', 1)
    .executeTakeFirst();
  return row === undefined ? null : personOf(row);
}

export async function hasPeople(shop: OpenShop): Promise<boolean> {
  const row = await shop.read.selectFrom('person').select('id').limit(1).executeTakeFirst();
  return row !== undefined;
}

export function addPerson(
  ctx: ShopContext,
  input: ContractInputs['people']['add'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'people.add' }, async (trx) => {
    await refuseTakenInitials(trx, input.initials, null);
    const row = await trx.insert('person', {
      id: ctx.newId(),
      name: input.name,
      initials: input.initials,
      role: input.role,
      active: 1,
    });
    return changedOf(row);
  });
}

export function editPerson(
  ctx: ShopContext,
  input: ContractInputs['people']['edit'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'people.edit' }, async (trx) => {
    await refuseTakenInitials(trx, input.initials, input.id);
    const row = await trx.update('person', input.id, input.rowVersion, {
      name: input.name,
      initials: input.initials,
      role: input.role,
      active: input.active ? 1 : 0,
    });
    await refuseNoOwner(trx);
    return changedOf(row);
  });
}

async function refuseTakenInitials(
  trx: CommandTransaction,
  initials: string,
  except: string | null,
): Promise<void> {
  const others = await trx.db
    .selectFrom('person')
    .select(['id', 'name'])
    .where('initials', '=', initials)
    .where('active', '=', 1)
    .execute();
  const other = others.find((row) => row.id !== except);
  if (other !== undefined) {
    throw new ShopError('BAD_INPUT', `${other.name} already uses the initials ${initials}.`, {
      initials: 'Choose other initials.',
    });
  }
}

async function refuseNoOwner(trx: CommandTransaction): Promise<void> {
  const owner = await trx.db
    .selectFrom('person')
    .select('id')
    .where('role', '=', 'owner')
    .where('active', '=', 1)
    .limit(1)
    .executeTakeFirst();
  if (owner === undefined) {
    throw new ShopError('CONFLICT', 'The shop needs at least one owner who works here.', {
      role: 'Name another owner first.',
    });
  }
}
