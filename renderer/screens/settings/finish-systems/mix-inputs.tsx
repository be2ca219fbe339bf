import { Fieldset, Select, Stack } from '@mantine/core';
import { mixPartLabels, mixPartNames } from '../../../../shared/finish.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { type PartProps, RangeInputs } from './range-inputs.tsx';
import type { MixFields, SheetFields } from './sheet-fields.ts';

const ways = [
  { value: 'volume', label: 'By volume' },
  { value: 'weight', label: 'By weight' },
];

function Ratio({ value, onChange, errors }: PartProps<SheetFields>) {
  const { mix, kind } = value;
  const set = (part: Partial<MixFields>) => onChange({ ...value, mix: { ...mix, ...part } });
  return (
    <FieldGrid>
      <Select
        label="Parts are measured"
        data={ways}
        value={mix.by}
        onChange={(by) => set({ by: by === 'weight' ? 'weight' : 'volume' })}
      />
      <NumberField
        label={kind === 'two-part' ? 'Parts of resin' : 'Parts of finish'}
        description="The first number of the ratio: 4 of 4:1."
        required
        value={mix.resinParts}
        error={errors['mix.resinParts']}
        onChange={(resinParts) => set({ resinParts })}
      />
      {kind === 'two-part' ? (
        <NumberField
          label="Parts of hardener"
          description="The second number: 1 of 4:1."
          required
          value={mix.hardenerParts}
          error={errors['mix.hardenerParts'] ?? errors.hardenerParts}
          onChange={(hardenerParts) => set({ hardenerParts })}
        />
      ) : null}
      <NumberField
        label="Thinner, percent"
        description="Of resin and hardener together, by the same measure; 0 for none."
        unit="%"
        value={mix.thinnerPercent}
        error={errors['mix.thinnerPercent']}
        onChange={(thinnerPercent) => set({ thinnerPercent })}
      />
    </FieldGrid>
  );
}

function Densities({ value, onChange, errors }: PartProps<SheetFields>) {
  const { mix, kind } = value;
  const parts = mixPartNames.filter((part) => part !== 'hardener' || kind === 'two-part');
  return (
    <FieldGrid>
      {parts.map((part) => (
        <NumberField
          key={part}
          label={`Density of the ${mixPartLabels[part].toLowerCase()}, g/mL`}
          description="Needed to change between volume and weight."
          unit="g/mL"
          value={mix.density[part]}
          error={errors[`mix.density.${part}`]}
          onChange={(typed) =>
            onChange({ ...value, mix: { ...mix, density: { ...mix.density, [part]: typed } } })
          }
        />
      ))}
    </FieldGrid>
  );
}

function Film({ value, onChange, errors }: PartProps<SheetFields>) {
  const { film } = value;
  return (
    <>
      <FieldGrid>
        <NumberField
          label="Solids by volume, percent"
          description="Mixed, before thinning."
          required
          unit="%"
          value={film.solidsPercent}
          error={errors['film.solidsPercent']}
          onChange={(solidsPercent) => onChange({ ...value, film: { ...film, solidsPercent } })}
        />
      </FieldGrid>
      <RangeInputs
        label="Wet film of one coat, mil"
        unit="mil"
        value={film.wetMil}
        errors={errors}
        path="film.wetMil"
        onChange={(wetMil) => onChange({ ...value, film: { ...film, wetMil } })}
      />
    </>
  );
}

function Pot({ value, onChange, errors }: PartProps<SheetFields>) {
  const { potLife } = value;
  const set = (part: Partial<SheetFields['potLife']>) =>
    onChange({ ...value, potLife: { ...potLife, ...part } });
  return (
    <Fieldset legend="Pot life">
      <FieldGrid>
        <NumberField
          label="Pot life, minutes"
          required
          unit="min"
          value={potLife.minutes}
          error={errors['potLife.minutes']}
          onChange={(minutes) => set({ minutes })}
        />
        <NumberField
          label="At the temperature of, F"
          description="It halves with each 18 F (10 C) above, and doubles below, inside the sheet's air only."
          required
          unit="F"
          value={potLife.referenceF}
          error={errors['potLife.referenceF']}
          onChange={(referenceF) => set({ referenceF })}
        />
        <NumberField
          label="Let it stand first, minutes"
          description="Induction time; 0 for none."
          unit="min"
          value={potLife.inductionMin}
          error={errors['potLife.inductionMin']}
          onChange={(inductionMin) => set({ inductionMin })}
        />
      </FieldGrid>
    </Fieldset>
  );
}

/** How it is mixed and what film it leaves; only for what is poured, not for cans and oils. */
export function MixInputs(props: PartProps<SheetFields>) {
  const { kind } = props.value;
  if (kind === 'aerosol' || kind === 'hand-rubbed-oil') return null;
  return (
    <>
      <Fieldset legend="Mixing">
        <Stack gap="sm">
          <Ratio {...props} />
          <Densities {...props} />
        </Stack>
      </Fieldset>
      <Fieldset legend="Film">
        <Stack gap="sm">
          <Film {...props} />
        </Stack>
      </Fieldset>
      {kind === 'two-part' ? <Pot {...props} /> : null}
    </>
  );
}
