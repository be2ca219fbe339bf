import { Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import { decimal } from '../../../../shared/measure.ts';
import { orpc } from '../../../api/client.ts';
import { sentenceOf } from '../../../api/errors.ts';

interface ScaleSelectProps {
  value: string | null;
  onChange: (id: string) => void;
  error: string | undefined;
}

/** Scales of the shop; one that may not be used today says why. */
export function ScaleSelect({ value, onChange, error }: ScaleSelectProps) {
  const query = useQuery(orpc.scales.list.queryOptions());
  const scales = (query.data ?? []).filter((scale) => scale.active);
  const refused = scales.filter((scale) => !scale.usable);
  const only = scales.filter((scale) => scale.usable);
  const chosen = value ?? (only.length === 1 ? (only[0]?.id ?? null) : null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the only scale in use is chosen once.
  useEffect(() => {
    if (chosen !== null && value === null) onChange(chosen);
  }, [chosen, value]);
  const options = scales.map((scale) => ({
    value: scale.id,
    disabled: !scale.usable,
    label: scale.usable
      ? `${scale.name}, ${errorText(scale.lastCheck?.worstErrorLbf ?? 0)}`
      : `${scale.name}: not today`,
  }));
  const why = refused.map((scale) => `${scale.name}: ${scale.reason}`).join(' ');
  const none = query.isSuccess && scales.length === 0 ? 'No scale yet. Add one in Settings.' : '';
  return (
    <Select
      label="Scale"
      required
      data={options}
      value={chosen}
      placeholder={query.isPending ? 'Reading ...' : 'Choose the scale'}
      error={error ?? (query.isError ? sentenceOf(query.error) : undefined)}
      description={none || why || 'Checked today with two loads.'}
      inputWrapperOrder={['label', 'input', 'description', 'error']}
      onChange={(id) => id !== null && onChange(id)}
    />
  );
}

function errorText(lbf: number): string {
  return `checked, ${decimal(Math.abs(lbf), 2)} lb off`;
}
