import { Select } from '@mantine/core';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { PlanFaceInput, PlanInput, PlanLimbInput } from '../../../shared/plan-input.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Panel } from '../../parts/panel.tsx';
import { constructionWords, facingWords, kindWords } from '../bows/bow-words.ts';
import { useDesk } from './desk-context.tsx';
import { withBow, withLimb } from './draft.ts';
import { Figure, MaybeFigure } from './figure.tsx';

type Bow = PlanInput['bow'];
type BowFigureName = { [Key in keyof Bow]: Bow[Key] extends number ? Key : never }[keyof Bow];

interface BowFigureProps {
  name: BowFigureName;
  label: string;
  unit?: string;
  times?: number;
  description?: string;
}

function BowFigure({ name, ...rest }: BowFigureProps) {
  const { input, change, errors } = useDesk();
  return (
    <Figure
      {...rest}
      value={input.bow[name]}
      error={errors[`bow.${name}`]}
      onChange={(value) => change(withBow(input, { [name]: value }))}
    />
  );
}

const limbNames: Record<Limb, string> = { upper: 'Upper', lower: 'Lower' };
const limbFigures: readonly {
  name: Exclude<keyof PlanLimbInput, 'stations'>;
  label: string;
  unit: string;
}[] = [
  { name: 'lengthIn', label: 'limb, fade to nock (in)', unit: 'in' },
  { name: 'fadeIn', label: 'throat to fade (in)', unit: 'in' },
  { name: 'fadeOffsetIn', label: 'fade off the throat (in)', unit: 'in' },
  { name: 'padDeg', label: 'pad angle (degrees)', unit: '°' },
];

function LimbFigures({ limb }: { limb: Limb }) {
  const { input, change, errors } = useDesk();
  return limbFigures.map(({ name, label, unit }) => (
    <Figure
      key={name}
      label={`${limbNames[limb]} ${label}`}
      unit={unit}
      value={input.bow[limb][name]}
      error={errors[`bow.${limb}.${name}`]}
      onChange={(value) => change(withLimb(input, limb, { [name]: value }))}
    />
  ));
}

const faceNames = { back: 'Back', belly: 'Belly' } as const;

function FaceFields({ face }: { face: 'back' | 'belly' }) {
  const { input, change, errors } = useDesk();
  const now = input.bow[face];
  const set = (part: Partial<PlanFaceInput>) =>
    change(withBow(input, { [face]: { ...now, ...part } }));
  return (
    <>
      <Select
        label={`${faceNames[face]} is faced with`}
        data={facingWords}
        value={now.facing}
        onChange={(value) =>
          set({ facing: facingWords.find((one) => one.value === value)?.value ?? now.facing })
        }
      />
      <Figure
        label={`${faceNames[face]} glass now (thou, 0: none)`}
        unit="thou"
        times={1000}
        value={now.glassNowIn}
        error={errors[`bow.${face}.glassNowIn`]}
        onChange={(glassNowIn) => set({ glassNowIn })}
      />
      <MaybeFigure
        label={`${faceNames[face]} glass when made (thou)`}
        unit="thou"
        times={1000}
        value={now.glassMadeIn}
        error={errors[`bow.${face}.glassMadeIn`]}
        onChange={(glassMadeIn) => set({ glassMadeIn })}
      />
    </>
  );
}

const sectionWords = [
  { value: 'measured', label: 'Measured' },
  { value: 'unknown', label: 'Guessed in part: a wider band' },
] as const;
const surfaceWords = [
  { value: 'bare', label: 'On the bare limb' },
  { value: 'over-finish', label: 'Over the finish: no thinning' },
] as const;

const isUnder = (errors: Record<string, string>, ...starts: string[]) =>
  Object.keys(errors).some((path) => starts.some((start) => path.startsWith(start)));

function Kind() {
  const { input, change } = useDesk();
  const { bow } = input;
  return (
    <FieldGrid>
      <Select
        label="Kind of bow"
        data={kindWords}
        value={bow.kind}
        onChange={(value) =>
          change(
            withBow(input, {
              kind: kindWords.find((one) => one.value === value)?.value ?? bow.kind,
            }),
          )
        }
      />
      <Select
        label="Construction"
        data={constructionWords}
        value={bow.construction}
        onChange={(value) =>
          change(
            withBow(input, {
              construction:
                constructionWords.find((one) => one.value === value)?.value ?? bow.construction,
            }),
          )
        }
      />
      <Select
        label="The section is"
        data={sectionWords}
        value={bow.section}
        onChange={(value) =>
          change(withBow(input, { section: value === 'measured' ? 'measured' : 'unknown' }))
        }
      />
      <Select
        label="Thickness was read"
        data={surfaceWords}
        value={bow.surface}
        onChange={(value) =>
          change(withBow(input, { surface: value === 'bare' ? 'bare' : 'over-finish' }))
        }
      />
    </FieldGrid>
  );
}

function SafeDraw() {
  const { input, change, errors } = useDesk();
  return (
    <MaybeFigure
      label="Maximum safe draw (in, AMO)"
      unit="in"
      description="Empty where nobody knows."
      value={input.bow.maxSafeDrawIn}
      error={errors['bow.maxSafeDrawIn']}
      onChange={(maxSafeDrawIn) => change(withBow(input, { maxSafeDrawIn }))}
    />
  );
}

/** Construction, faces and shape of the bow that is reckoned; nothing of it is written back. */
export function BowPanel() {
  const { errors } = useDesk();
  const shape = ['bow.reflexIn', 'bow.recurve', 'bow.braceIn', 'bow.edgeRadiusIn', 'bow.max'];
  return (
    <Panel title="The bow as it is reckoned">
      <Fold title="Construction and glass" isWrong={isUnder(errors, 'bow.back', 'bow.belly')}>
        <Kind />
        <FieldGrid>
          <FaceFields face="back" />
          <FaceFields face="belly" />
        </FieldGrid>
      </Fold>
      <Fold title="Shape" isWrong={isUnder(errors, ...shape)}>
        <FieldGrid>
          <BowFigure name="braceIn" label="Brace height (in)" unit="in" />
          <BowFigure name="reflexIn" label="Reflex at the tip (in)" unit="in" />
          <BowFigure name="recurveIn" label="Recurve, depth of the hook (in)" unit="in" />
          <BowFigure
            name="recurveFromPart"
            label="Hook begins at (% of the limb)"
            unit="%"
            times={100}
          />
          <BowFigure name="edgeRadiusIn" label="Edge radius (in)" unit="in" />
          <SafeDraw />
        </FieldGrid>
      </Fold>
      <Fold
        title="Limbs on their riser"
        isWrong={
          isUnder(errors, 'bow.upper.', 'bow.lower.') &&
          !isUnder(errors, 'bow.upper.stations', 'bow.lower.stations')
        }
      >
        <FieldGrid>
          {limbs.map((limb) => (
            <LimbFigures key={limb} limb={limb} />
          ))}
        </FieldGrid>
      </Fold>
      <Fold
        title="Stiffness of the materials"
        isWrong={isUnder(errors, 'bow.coreGpa', 'bow.glassGpa')}
      >
        <FieldGrid>
          <BowFigure
            name="coreGpa"
            label="Core along the grain (GPa)"
            unit="GPa"
            description="A guess; it largely cancels."
          />
          <BowFigure
            name="glassGpa"
            label="Glass (GPa)"
            unit="GPa"
            description="A guess; it largely cancels."
          />
        </FieldGrid>
      </Fold>
    </Panel>
  );
}
