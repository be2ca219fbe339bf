import { Select } from '@mantine/core';
import { isGlass } from '../../../shared/bow-checks.ts';
import type { BowFields, Face } from '../../../shared/contract/bows.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { facingWords, glassHowWords } from './bow-words.ts';
import { ThouField } from './thou-field.tsx';

type Side = keyof BowFields['faces'];
const sideNames: Record<Side, string> = { back: 'Back', belly: 'Belly' };

function FaceFields({ value, set, errors, side }: BowGroupProps & { side: Side }) {
  const face = value.faces[side];
  const name = sideNames[side];
  const change = (part: Partial<Face>) =>
    set({ faces: { ...value.faces, [side]: { ...face, ...part } } });
  const wrong = (key: keyof Face) => errors[`faces.${side}.${key}`];
  // Also while something is noted that no longer fits the facing: what is refused must be seen.
  const isShown =
    isGlass(face.facing) ||
    face.glassMadeIn !== null ||
    face.glassNowIn !== null ||
    face.glassHow !== 'not-measured';
  return (
    <>
      <Select
        label={`${name}, facing`}
        data={facingWords}
        value={face.facing}
        error={wrong('facing')}
        onChange={(facing) => facing && change({ facing })}
      />
      {isShown ? (
        <>
          <ThouField
            label={`${name}, glass when made, thou`}
            value={face.glassMadeIn}
            error={wrong('glassMadeIn')}
            onChange={(glassMadeIn) => change({ glassMadeIn })}
          />
          <ThouField
            label={`${name}, glass now, thou`}
            value={face.glassNowIn}
            error={wrong('glassNowIn')}
            onChange={(glassNowIn) => change({ glassNowIn })}
          />
          <Select
            label={`${name}, how it was measured`}
            data={glassHowWords}
            value={face.glassHow}
            error={wrong('glassHow')}
            onChange={(glassHow) => glassHow && change({ glassHow })}
          />
        </>
      ) : null}
    </>
  );
}

/** What lies on back and belly of the limbs, and how much glass is left. */
export function FacesFields(props: BowGroupProps) {
  return (
    <>
      <FieldGrid>
        <FaceFields {...props} side="back" />
      </FieldGrid>
      <div style={{ height: 16 }} />
      <FieldGrid>
        <FaceFields {...props} side="belly" />
      </FieldGrid>
    </>
  );
}
