import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import type { AirNumbers } from './air-words.ts';

const typingMs = 150;

const askedOf = (
  { airF, humidityPercent, surfaceF }: AirNumbers,
  finishSystemId: string | null,
) => ({
  airF,
  humidityPercent,
  surfaceF,
  finishSystemId,
});

/** Dew point, margin and what stands against a coat, of air as it is typed or was read. */
export function useAirLook(air: AirNumbers | null, finishSystemId: string | null) {
  const given = air === null ? null : JSON.stringify(askedOf(air, finishSystemId));
  const [asked] = useDebouncedValue(given, typingMs);
  const input = asked === null ? null : JSON.parse(asked);
  const look = useQuery({
    ...orpc.finish.lookAtAir.queryOptions({ input }),
    enabled: input !== null,
    placeholderData: keepPreviousData,
  });
  return {
    look: look.data,
    /** The look is of other air than the given. */
    isBusy: given !== asked || look.isPlaceholderData || look.isPending,
    error: look.error,
    again: () => void look.refetch(),
  };
}
