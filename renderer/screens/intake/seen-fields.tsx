import { Checkbox, Textarea, TextInput } from '@mantine/core';
import { usualBelongings } from '../../../shared/arrival.ts';
import classes from './intake.module.css';
import type { SeenForm } from './intake-form.ts';

interface SeenFieldsProps {
  seen: SeenForm;
  set: (part: Partial<SeenForm>) => void;
  errors: Record<string, string>;
}

/** What is seen at once of a bow that is here. The rest of the check follows at the unpacking table. */
export function SeenFields({ seen, set, errors }: SeenFieldsProps) {
  const isListed = seen.belongings.length > 0 || seen.moreBelongings.trim() !== '';
  return (
    <>
      <TextInput
        type="date"
        label="Handed over, or box opened, on"
        required
        style={{ maxWidth: 240 }}
        value={seen.openedOn}
        error={errors.openedOn}
        onChange={(event) => set({ openedOn: event.currentTarget.value })}
      />
      <Textarea
        label="Packaging"
        placeholder="Tube or box, padding, damage; a sock over the counter"
        maxLength={1000}
        value={seen.packaging}
        error={errors.packaging}
        onChange={(event) => set({ packaging: event.currentTarget.value })}
      />
      <Textarea
        label="Condition of the bow"
        description="Look at it together with the customer where there is one."
        maxLength={2000}
        value={seen.condition}
        error={errors.condition}
        onChange={(event) => set({ condition: event.currentTarget.value })}
      />
      <Checkbox.Group
        size="md"
        label="Came along"
        value={seen.belongings}
        error={errors.belongings}
        onChange={(belongings) =>
          set({ belongings, ...(belongings.length > 0 ? { nothingCameAlong: false } : {}) })
        }
      >
        <div className={classes.buttons} style={{ paddingTop: 8, gap: '8px 24px' }}>
          {usualBelongings.map((thing) => (
            <Checkbox key={thing} value={thing} label={thing} />
          ))}
        </div>
      </Checkbox.Group>
      <TextInput
        label="Something else that came along"
        description="Several with commas between them."
        maxLength={1000}
        autoComplete="off"
        value={seen.moreBelongings}
        onChange={(event) => {
          const moreBelongings = event.currentTarget.value;
          set({ moreBelongings, ...(moreBelongings === '' ? {} : { nothingCameAlong: false }) });
        }}
      />
      <Checkbox
        label="Nothing came along"
        disabled={isListed}
        checked={seen.nothingCameAlong}
        onChange={(event) => set({ nothingCameAlong: event.currentTarget.checked })}
      />
    </>
  );
}
