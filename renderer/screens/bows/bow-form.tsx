import { Textarea } from '@mantine/core';
import type { ComponentType } from 'react';
import type { BowFields } from '../../../shared/contract/bows.ts';
import { facingText, glassText } from '../../../shared/face-text.ts';
import { inchGlyph } from '../../../shared/measure.ts';
import { Fold } from '../../parts/fold.tsx';
import { wordOf } from '../customers/customer-words.ts';
import { FacesFields } from './bow-face-fields.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { KindFields } from './bow-kind-fields.tsx';
import { LengthFields } from './bow-length-fields.tsx';
import { MarkedFields } from './bow-marked-fields.tsx';
import { bowTitle, markedText } from './bow-text.ts';
import { WoodFields } from './bow-wood-fields.tsx';
import { facingWords } from './bow-words.ts';

interface BowFieldsFormProps {
  value: BowFields;
  onChange: (value: BowFields) => void;
  errors: Record<string, string>;
}

interface Group {
  title: string;
  /** The fields inside, by the first word of their path. */
  keys: readonly string[];
  startsOpen?: boolean;
  said: (value: BowFields) => string;
  Fields: ComponentType<BowGroupProps>;
}

const joined = (parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');
const notYet = 'nothing noted yet';

const groups: readonly Group[] = [
  {
    title: 'What it is',
    keys: ['kind', 'construction', 'takeDown', 'hand', 'maker', 'model', 'serial'],
    startsOpen: true,
    said: bowTitle,
    Fields: KindFields,
  },
  {
    title: 'As marked',
    keys: [
      'amoLengthIn',
      'markedWeightLbf',
      'markedDrawIn',
      'markedDrawReference',
      'maxSafeDrawIn',
    ],
    startsOpen: true,
    said: (value) => markedText(value) || notYet,
    Fields: MarkedFields,
  },
  {
    title: 'Limbs and lengths',
    keys: [
      'tipToTipIn',
      'profile',
      'recurveDepthIn',
      'throatToFadeIn',
      'limbPadDeg',
      'limbs',
      'braceLowIn',
      'braceHighIn',
    ],
    said: ({ tipToTipIn, limbs: { upper, lower } }) =>
      joined([
        tipToTipIn === null ? '' : `${inchGlyph(tipToTipIn)}" tip to tip`,
        upper.limbIn === null ? '' : `upper limb ${inchGlyph(upper.limbIn)}"`,
        lower.limbIn === null ? '' : `lower limb ${inchGlyph(lower.limbIn)}"`,
      ]) || notYet,
    Fields: LengthFields,
  },
  {
    title: 'Faces and glass',
    keys: ['faces'],
    said: ({ faces }) =>
      joined([
        facingText(faces, (facing) => wordOf(facingWords, facing)),
        glassText(faces.back),
        glassText(faces.belly),
      ]),
    Fields: FacesFields,
  },
  {
    title: 'Wood and tips',
    keys: ['coreWood', 'moisturePct', 'edgeRadiusIn', 'lowStretchTips', 'listedSpecies'],
    said: ({ coreWood }) => coreWood || notYet,
    Fields: WoodFields,
  },
];

/** Everything a shop keeps of a bow, as a controlled group of fields in folds. */
export function BowFieldsForm({ value, onChange, errors }: BowFieldsFormProps) {
  const set = (part: Partial<BowFields>) => onChange({ ...value, ...part });
  const wrong = new Set(Object.keys(errors).map((path) => path.split('.')[0] ?? ''));
  return (
    <div>
      {groups.map(({ title, keys, startsOpen = false, said, Fields }) => (
        <Fold
          key={title}
          title={title}
          said={said(value)}
          startsOpen={startsOpen}
          isWrong={keys.some((key) => wrong.has(key))}
        >
          <Fields value={value} set={set} errors={errors} />
        </Fold>
      ))}
      <Textarea
        label="Notes on the bow"
        value={value.notes}
        error={errors.notes}
        onChange={(event) => set({ notes: event.currentTarget.value })}
      />
    </div>
  );
}
