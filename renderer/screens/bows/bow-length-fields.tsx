import { Select } from '@mantine/core';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { LimbLengths } from '../../../shared/contract/bows.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { profileWords } from './bow-words.ts';

const limbNames: Record<Limb, string> = { upper: 'Upper limb', lower: 'Lower limb' };
type NumberKey =
  | 'braceLowIn'
  | 'braceHighIn'
  | 'tipToTipIn'
  | 'recurveDepthIn'
  | 'throatToFadeIn'
  | 'limbPadDeg';

/** The shape of the bow, unstrung, and how long each limb is. */
export function LengthFields({ value, set, errors }: BowGroupProps) {
  const measured = (key: NumberKey, label: string, unit: string, description?: string) => (
    <NumberField
      label={label}
      unit={unit}
      {...(description === undefined ? {} : { description })}
      value={value[key]}
      error={errors[key]}
      onChange={(given) => set({ [key]: given })}
    />
  );
  const ofLimb = (limb: Limb, key: keyof LimbLengths, label: string) => (
    <NumberField
      key={`${limb}.${key}`}
      label={`${limbNames[limb]}, ${label}`}
      unit="in"
      value={value.limbs[limb][key]}
      error={errors[`limbs.${limb}.${key}`]}
      onChange={(given) =>
        set({ limbs: { ...value.limbs, [limb]: { ...value.limbs[limb], [key]: given } } })
      }
    />
  );
  const isCurved = value.profile === 'recurve' || value.recurveDepthIn !== null;
  return (
    <FieldGrid>
      {measured('tipToTipIn', 'Tip to tip, unstrung, inches', 'in')}
      <Select
        label="Profile, unstrung"
        data={profileWords}
        value={value.profile}
        onChange={(profile) => profile && set({ profile })}
      />
      {isCurved
        ? measured(
            'recurveDepthIn',
            'Recurve depth, inches',
            'in',
            'How far the tip stands off the line of the straight limb.',
          )
        : null}
      {measured(
        'throatToFadeIn',
        'Throat to fade line, inches',
        'in',
        'Square to the bow; minus where the fades lie towards the back.',
      )}
      {measured(
        'limbPadDeg',
        'Limb pad or fade angle, degrees',
        'deg',
        'Minus where the limb leaves it leaning towards the back.',
      )}
      {limbs.flatMap((limb) => [
        ofLimb(limb, 'fadeIn', 'throat to fade, inches'),
        ofLimb(limb, 'limbIn', 'fade to nock, inches'),
      ])}
      {measured(
        'braceLowIn',
        'Lowest brace height, inches',
        'in',
        'As the maker gives it, throat of the grip to the string.',
      )}
      {measured('braceHighIn', 'Highest brace height, inches', 'in')}
    </FieldGrid>
  );
}
