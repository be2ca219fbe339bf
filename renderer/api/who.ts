import { useQuery } from '@tanstack/react-query';
import type { Person } from '../../shared/people.ts';
import { orpc } from './client.ts';
import { useSession } from './session.ts';

/** Who is working here, or null while nobody is chosen or the list is still on its way. */
export function useWho(): Person | null {
  const { personId } = useSession();
  const people = useQuery(orpc.people.list.queryOptions());
  return people.data?.find((person) => person.id === personId && person.active) ?? null;
}
