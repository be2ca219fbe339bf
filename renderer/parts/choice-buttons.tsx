import { Button } from '@mantine/core';
import { IconCheck } from '@tabler/icons-react';
import classes from './choice-buttons.module.css';

interface ChoiceButtonsProps<T extends string> {
  label: string;
  options: readonly T[];
  value: T | null;
  onChange: (value: T | null) => void;
}

/** One of a few words, one tap each, for a gloved finger; a second tap takes it back. */
export function ChoiceButtons<T extends string>(props: ChoiceButtonsProps<T>) {
  const { label, options, value, onChange } = props;
  return (
    <fieldset className={classes.group}>
      <legend className={classes.label}>{label}</legend>
      <div className={classes.choices}>
        {options.map((option) => (
          <Button
            key={option}
            variant={value === option ? 'filled' : 'default'}
            aria-pressed={value === option}
            leftSection={value === option ? <IconCheck size={18} aria-hidden="true" /> : undefined}
            onClick={() => onChange(value === option ? null : option)}
          >
            {option}
          </Button>
        ))}
      </div>
    </fieldset>
  );
}
