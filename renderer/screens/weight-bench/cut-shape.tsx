import { Radio, Slider } from '@mantine/core';
import { useId } from 'react';
import { inchFraction } from '../../../shared/measure.ts';
import { type CutFace, cutFace } from '../../../shared/weight-plan.ts';
import { useDesk } from './desk-context.tsx';
import { withChoices, withShape } from './draft.ts';
import classes from './weight-bench.module.css';

interface ShapeSliderProps {
  name: 'fromIn' | 'fullFromIn' | 'carriedPart' | 'endsShortIn';
  label: string;
  min: number;
  max: number;
  step: number;
  text: (value: number) => string;
}

const inchText = (value: number) => `${inchFraction(value)}"`;
const partText = (value: number) => `${Math.round(100 * value)} % of the limb`;

/** A length of the cut that answers while it moves. */
function ShapeSlider({ name, label, min, max, step, text }: ShapeSliderProps) {
  const { input, change, setSliding, errors } = useDesk();
  const labelId = useId();
  const value = input.choices.cutShape[name];
  const error = errors[`choices.cutShape.${name}`];
  return (
    <div className={classes.slider}>
      <span className={classes.sliderHead}>
        <span id={labelId}>{label}</span>
        <strong>{text(value)}</strong>
      </span>
      <Slider
        min={min}
        max={max}
        step={step}
        value={value}
        label={null}
        thumbSize={24}
        thumbProps={{ 'aria-labelledby': labelId, 'aria-valuetext': text(value) }}
        onChange={(next) => {
          setSliding(true);
          change(withShape(input, { [name]: next }));
        }}
        onChangeEnd={() => setSliding(false)}
      />
      {error === undefined ? null : <span className={classes.error}>{error}</span>}
    </div>
  );
}

const faceChoices: { value: CutFace; label: string }[] = [
  { value: 'both', label: 'both faces alike' },
  { value: 'back', label: 'the back (trapped)' },
  { value: 'belly', label: 'the belly (trapped)' },
];

/** Where a side cut runs, and which face it narrows. */
export function CutShapeFields() {
  const { input, change } = useDesk();
  const longest = Math.min(input.bow.upper.lengthIn, input.bow.lower.lengthIn);
  const half = Number.isNaN(longest) ? 12 : Math.max(4, Math.floor(longest / 2));
  return (
    <div className={classes.sliders}>
      <ShapeSlider
        name="fromIn"
        label="Cut begins past the fade"
        min={0}
        max={half}
        step={0.25}
        text={inchText}
      />
      <ShapeSlider
        name="fullFromIn"
        label="Full cut from"
        min={0}
        max={half}
        step={0.25}
        text={inchText}
      />
      <ShapeSlider
        name="carriedPart"
        label="Full cut to"
        min={0.1}
        max={0.95}
        step={0.01}
        text={partText}
      />
      <ShapeSlider
        name="endsShortIn"
        label="Cut ends short of the nock"
        min={0}
        max={half}
        step={0.25}
        text={inchText}
      />
      <Radio.Group
        className={classes.faces}
        label="A side cut narrows"
        value={input.choices.face}
        onChange={(value) => change(withChoices(input, { face: cutFace.parse(value) }))}
      >
        <div className={classes.choices}>
          {faceChoices.map(({ value, label }) => (
            <Radio key={value} value={value} label={label} />
          ))}
        </div>
      </Radio.Group>
    </div>
  );
}
