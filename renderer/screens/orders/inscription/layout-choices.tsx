import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { ChoiceButtons } from '../../../parts/choice-buttons.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import classes from './inscription.module.css';
import {
  makerMarkChoices,
  positionChoices,
  positionFaces,
  positionLimbs,
  positionText,
} from './layout-fields.ts';

interface ChoiceProps {
  value: string;
  error: string | undefined;
  onChange: (value: string) => void;
}

type PositionLimb = (typeof positionLimbs)[number];
type PositionFace = (typeof positionFaces)[number];

/** Taps make the words; the words are what is kept, and may be written over. */
export function PositionChoice({ value, error, onChange }: ChoiceProps) {
  const [said] = useState(() => positionChoices(value));
  const [limb, setLimb] = useState<PositionLimb | null>(said.limb);
  const [face, setFace] = useState<PositionFace | null>(said.face);
  const [fromGripIn, setFromGripIn] = useState<number | null>(said.fromGripIn);
  const say = (l: typeof limb, f: typeof face, from: number | null) => {
    setLimb(l);
    setFace(f);
    setFromGripIn(from);
    onChange(positionText(l, f, from));
  };
  return (
    <div className={classes.choice}>
      <ChoiceButtons
        label="Where on the bow"
        options={positionLimbs}
        value={limb}
        onChange={(next) => say(next, face, fromGripIn)}
      />
      <ChoiceButtons
        label="Which face"
        options={positionFaces}
        value={face}
        onChange={(next) => say(limb, next, fromGripIn)}
      />
      <div className={classes.short}>
        <NumberField
          label="Distance from the grip, inches"
          unit="in"
          value={fromGripIn}
          onChange={(next) => say(limb, face, next)}
        />
      </div>
      <TextInput
        label="In words, as the customer approves it"
        required
        maxLength={200}
        value={value}
        error={error}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </div>
  );
}

/** Where the maker's own mark stays. The shop never writes a maker's name as if it made the bow. */
export function MakerMarkChoice({ value, error, onChange }: ChoiceProps) {
  return (
    <div className={classes.choice}>
      <TextInput
        label="Maker's own mark"
        description="Where it stays or what becomes of it. Never write a maker's name as if the shop had made the bow."
        maxLength={200}
        value={value}
        error={error}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
      <div className={classes.quick}>
        {makerMarkChoices.map((choice) => (
          <Button key={choice} variant="default" onClick={() => onChange(choice)}>
            {choice}
          </Button>
        ))}
      </div>
    </div>
  );
}
