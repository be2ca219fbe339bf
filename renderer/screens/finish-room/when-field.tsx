import { TextInput } from '@mantine/core';
import { momentText } from '../../parts/days.ts';
import { Fold } from '../../parts/fold.tsx';
import { instantFrom } from './when.ts';

interface WhenFieldProps {
  /** Local time as the field writes it; empty for now. */
  value: string;
  onChange: (value: string) => void;
  error?: string | undefined;
}

/** When it was done. Now, where nothing is given; earlier where it is written down afterwards. */
export function WhenField({ value, onChange, error }: WhenFieldProps) {
  const at = instantFrom(value);
  return (
    <Fold
      title="When"
      said={at === null ? 'now' : momentText(at)}
      startsOpen={value !== ''}
      isWrong={error !== undefined}
    >
      <TextInput
        type="datetime-local"
        label="Done at, where it was earlier"
        description="Empty for now. Clocks run from this time."
        value={value}
        error={error}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </Fold>
  );
}
