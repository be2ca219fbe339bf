import { Select, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../../api/client.ts';
import { sentenceOf } from '../../../api/errors.ts';
import type { ParcelFields } from './parcel-fields.ts';

interface CarrierSelectProps {
  fields: ParcelFields;
  set: (part: Partial<ParcelFields>) => void;
  errors: Record<string, string>;
}

const ownWords = 'own-words';

/** One of the shop's carriers, whose limits are known, or a name in words. */
export function CarrierSelect({ fields, set, errors }: CarrierSelectProps) {
  const query = useQuery(orpc.carriers.list.queryOptions());
  const carriers = query.data ?? [];
  const offered = carriers.filter((each) => each.active || each.id === fields.carrierId);
  return (
    <>
      <Select
        label="Carrier"
        required
        data={[
          ...offered.map((each) => ({ value: each.id, label: each.name })),
          { value: ownWords, label: 'Another, in your own words' },
        ]}
        value={fields.carrierId ?? ownWords}
        description={
          query.isSuccess && carriers.length === 0
            ? 'No carrier yet. The owner adds the usual ones in Settings.'
            : 'Limits and their day stand in Settings.'
        }
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        error={errors.carrierId ?? (query.isError ? sentenceOf(query.error) : undefined)}
        onChange={(value) => {
          const carrier = carriers.find((each) => each.id === value);
          set({ carrierId: carrier?.id ?? null, carrierName: carrier?.name ?? '' });
        }}
      />
      {fields.carrierId === null ? (
        <TextInput
          label="Name of the carrier"
          required
          maxLength={120}
          autoComplete="off"
          value={fields.carrierName}
          error={errors.carrierName}
          onChange={(event) => set({ carrierName: event.currentTarget.value })}
        />
      ) : null}
    </>
  );
}
