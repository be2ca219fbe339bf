import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { sprayErrors } from './spray-errors.ts';
import { type Source, type SprayFields, sessionInput } from './spray-fields.ts';

const typingMs = 200;
/** The cup, the air and the windows change by time alone. */
const readAgainMs = 30_000;

/** What stands against a session as it is put together; nothing is asked while a field is wrong. */
export function useSprayLook(fields: SprayFields, source: Source | undefined) {
  const input = sessionInput(fields, source);
  const [asked] = useDebouncedValue(JSON.stringify(input), typingMs);
  const isSettled = asked === JSON.stringify(input);
  const isSound = Object.keys(sprayErrors(fields, source)).length === 0;
  const look = useQuery({
    ...orpc.finish.lookAtSession.queryOptions({ input }),
    enabled: isSound && isSettled,
    placeholderData: keepPreviousData,
    refetchInterval: readAgainMs,
  });
  return {
    look: isSound ? look.data : undefined,
    /** The look is of the session as it stood before. */
    isBusy: isSound && (!isSettled || look.isPlaceholderData || look.isPending),
    error: isSound ? look.error : null,
    again: () => void look.refetch(),
  };
}
