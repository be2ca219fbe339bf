import { Radio } from '@mantine/core';
import { sanding, sandings } from '../../../shared/weight-plan.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Panel } from '../../parts/panel.tsx';
import { useDesk } from './desk-context.tsx';
import { withSanding, withWish } from './draft.ts';
import { Figure } from './figure.tsx';
import classes from './weight-bench.module.css';

type Wish = ReturnType<typeof useDesk>['input']['wish'];
type FigureName = {
  [Key in keyof Wish]: Wish[Key] extends number ? Key : never;
}[keyof Wish];

interface WishFigureProps {
  name: FigureName;
  label: string;
  unit?: string;
  description?: string;
}

function WishFigure({ name, ...rest }: WishFigureProps) {
  const { input, change, errors } = useDesk();
  return (
    <Figure
      {...rest}
      value={input.wish[name]}
      error={errors[`wish.${name}`]}
      onChange={(value) => change(withWish(input, { [name]: value }))}
    />
  );
}

const sandingLabels = {
  'full strip': 'A full strip and sanding',
  'final sanding only': 'Final sanding only',
} as const;

function SandingChoice() {
  const { input, change, start } = useDesk();
  return (
    <Radio.Group
      label="Sanding that follows"
      value={input.wish.sanding}
      onChange={(value) => change(withSanding(input, sanding.parse(value), start.allowances))}
    >
      {sandings.map((kind) => (
        <Radio
          key={kind}
          value={kind}
          label={sandingLabels[kind]}
          description={start.allowances[kind].words}
        />
      ))}
    </Radio.Group>
  );
}

/** How the spread of the forecast is made up: for whoever wants to look. */
function Spread() {
  const { start, errors } = useDesk();
  const names = ['allowanceMeanThou', 'allowanceSdThou', 'effectivenessMean', 'effectivenessSd'];
  return (
    <Fold
      title="What the forecast rests on"
      said="spread, allowance, effectiveness"
      isWrong={[...names, 'weightSdLbf'].some((name) => errors[`wish.${name}`] !== undefined)}
    >
      <p className={classes.quiet}>{start.effectiveness.words}</p>
      <FieldGrid>
        <WishFigure name="weightSdLbf" label="Spread of the weighing (lb)" unit="lb" />
        <WishFigure
          name="allowanceMeanThou"
          label="Sanding takes off each face (thou)"
          unit="thou"
        />
        <WishFigure name="allowanceSdThou" label="Its spread (thou)" unit="thou" />
        <WishFigure name="effectivenessMean" label="Real over reckoned drop" />
        <WishFigure name="effectivenessSd" label="Spread of that" />
      </FieldGrid>
    </Fold>
  );
}

/** What the bow weighs, what it is to weigh, and what follows. */
export function WishPanel() {
  return (
    <Panel title="From and to">
      <FieldGrid>
        <WishFigure name="weightLbf" label="Weight now (lb)" unit="lb" />
        <WishFigure name="targetLbf" label="Target (lb)" unit="lb" />
        <WishFigure name="drawIn" label="At a draw of (in, AMO)" unit="in" />
        <WishFigure name="reserveLbf" label="Reserve (lb)" unit="lb" />
        <WishFigure
          name="tillerIn"
          label="Tiller now (in)"
          unit="in"
          description="Upper minus lower, at the fades."
        />
        <WishFigure
          name="tillerTargetIn"
          label="Tiller wanted (in)"
          unit="in"
          description="A fraction like 1/8 or -1/16 will do."
        />
      </FieldGrid>
      <div className={classes.gap}>
        <SandingChoice />
      </div>
      <div className={classes.gap}>
        <Spread />
      </div>
    </Panel>
  );
}
