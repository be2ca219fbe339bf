import { Button, Checkbox, SegmentedControl, TextInput } from '@mantine/core';
import { type PointerEvent, useRef } from 'react';
import { intentWords, type Signature, type Stroke } from '../../../../shared/signatures.ts';
import { Mark } from '../../../parts/mark.tsx';
import classes from './signature.module.css';
import { SignatureDrawing } from './signature-drawing.tsx';
import { pointIn, type SignedBy, strokesWith } from './signature-fields.ts';

interface SignaturePadProps {
  value: SignedBy;
  onChange: (value: SignedBy) => void;
  error: string | undefined;
}

/** Where the customer signs: drawn with pen, finger or mouse, or the full name typed. */
export function SignaturePad({ value, onChange, error }: SignaturePadProps) {
  return (
    <fieldset className={classes.field}>
      <legend className={classes.legend}>Signature of the customer</legend>
      <SegmentedControl
        aria-label="How it is signed"
        styles={{ label: { minHeight: 44, alignContent: 'center' } }}
        data={[
          { value: 'drawn', label: 'Draw it' },
          { value: 'typed', label: 'Type the name' },
        ]}
        value={value.manner}
        onChange={(manner) => onChange({ ...value, manner: manner as SignedBy['manner'] })}
      />
      {value.manner === 'drawn' ? (
        <DrawingPad value={value} onChange={onChange} />
      ) : (
        <TextInput
          label="Full name, typed by who signs"
          maxLength={120}
          autoComplete="off"
          value={value.name}
          onChange={(event) => onChange({ ...value, name: event.currentTarget.value })}
        />
      )}
      <Checkbox
        mt="sm"
        label={intentWords}
        checked={value.agrees}
        onChange={(event) => onChange({ ...value, agrees: event.currentTarget.checked })}
      />
      {error === undefined ? null : (
        <div role="alert">
          <Mark kind="stop">{error}</Mark>
        </div>
      )}
    </fieldset>
  );
}

function DrawingPad({ value, onChange }: Omit<SignaturePadProps, 'error'>) {
  const drawing = useRef<Stroke | null>(null);
  const set = (strokes: Stroke[]) => onChange({ ...value, strokes });
  const down = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    drawing.current = [pointIn(event.currentTarget, event)];
    set([...value.strokes, drawing.current]);
  };
  const move = (event: PointerEvent<SVGSVGElement>) => {
    if (drawing.current === null) return;
    drawing.current = [...drawing.current, pointIn(event.currentTarget, event)];
    set(strokesWith(value.strokes, drawing.current));
  };
  const up = () => {
    drawing.current = null;
  };
  return (
    <>
      <SignatureDrawing
        strokes={value.strokes}
        label="Box to sign in. Without a pen or mouse choose: Type the name."
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
      />
      <div className={classes.buttons}>
        <Button
          variant="default"
          disabled={value.strokes.length === 0}
          onClick={() => set(value.strokes.slice(0, -1))}
        >
          Take back the last line
        </Button>
        <Button variant="default" disabled={value.strokes.length === 0} onClick={() => set([])}>
          Clear
        </Button>
      </div>
    </>
  );
}

/** A signature as it was given. */
export function SignatureShown({ signature }: { signature: Signature }) {
  if (signature.manner === 'typed') {
    return (
      <p className={classes.typed}>
        Signed by typing the full name: <strong>{signature.name}</strong> ("{signature.intent}")
      </p>
    );
  }
  return (
    <div className={classes.shown}>
      <SignatureDrawing strokes={signature.strokes} label="Signature drawn on the screen" />
    </div>
  );
}
