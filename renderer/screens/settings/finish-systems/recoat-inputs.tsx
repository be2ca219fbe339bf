import { Button, Checkbox, Fieldset, Group } from '@mantine/core';
import { FieldGrid } from '../../../parts/fields.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import type { PartProps } from './range-inputs.tsx';
import {
  type BandFields,
  newBand,
  newSpan,
  type SheetFields,
  type SpanFields,
} from './sheet-fields.ts';

const mostBands = 12;
const mostSpans = 6;

interface RowProps<Value> {
  value: Value;
  onChange: (value: Value) => void;
  /** Nothing where it is the only one. */
  onRemove: (() => void) | undefined;
  errors: Record<string, string>;
  /** Path in the sheet: `recoat.0`. */
  path: string;
  /** From 1. */
  place: number;
}

function SpanInputs(props: RowProps<SpanFields> & { line: number }) {
  const { value, onChange, onRemove, errors, path, place, line } = props;
  const what = `Line ${line}, time ${place}`;
  return (
    <Fieldset legend={`${what}, hours after the coat`} variant="unstyled" mt="md">
      <FieldGrid>
        <NumberField
          label="From, hours"
          required
          unit="h"
          value={value.fromH}
          error={errors[`${path}.fromH`]}
          onChange={(fromH) => onChange({ ...value, fromH })}
        />
        <NumberField
          label="To, hours"
          placeholder="no end"
          unit="h"
          value={value.toH}
          error={errors[`${path}.toH`]}
          onChange={(toH) => onChange({ ...value, toH })}
        />
      </FieldGrid>
      <Group mt="xs" mih={44}>
        <Checkbox
          label="Scuff first"
          checked={value.scuff}
          onChange={(event) => onChange({ ...value, scuff: event.currentTarget.checked })}
        />
        {onRemove === undefined ? null : (
          <Button variant="subtle" onClick={onRemove} aria-label={`Take this time out: ${what}`}>
            Take this time out
          </Button>
        )}
      </Group>
    </Fieldset>
  );
}

function BandInputs({ value, onChange, onRemove, errors, path, place }: RowProps<BandFields>) {
  const { spans } = value;
  const set = (next: readonly SpanFields[]) => onChange({ ...value, spans: next });
  const wrong = errors[path];
  return (
    <Fieldset legend={`Recoat line ${place}`}>
      {wrong === undefined ? null : (
        <p role="alert" style={{ margin: '0 0 8px' }}>
          <Mark kind="stop">{wrong}</Mark>
        </p>
      )}
      <FieldGrid>
        <NumberField
          label="Surface from, F"
          required
          unit="F"
          value={value.fromF}
          error={errors[`${path}.fromF`]}
          onChange={(fromF) => onChange({ ...value, fromF })}
        />
        <NumberField
          label="Surface to, F"
          required
          unit="F"
          value={value.toF}
          error={errors[`${path}.toF`]}
          onChange={(toF) => onChange({ ...value, toF })}
        />
      </FieldGrid>
      {spans.map((span, at) => (
        <SpanInputs
          key={span.key}
          line={place}
          place={at + 1}
          path={`${path}.spans.${at}`}
          errors={errors}
          value={span}
          onChange={(next) => set(spans.map((each) => (each.key === span.key ? next : each)))}
          onRemove={
            spans.length > 1 ? () => set(spans.filter((each) => each.key !== span.key)) : undefined
          }
        />
      ))}
      <div style={{ display: 'flex', flexWrap: 'wrap', gap: 8, marginTop: 12 }}>
        {spans.length < mostSpans ? (
          <Button variant="default" onClick={() => set([...spans, newSpan(spans)])}>
            Add a later time to line {place}
          </Button>
        ) : null}
        {onRemove === undefined ? null : (
          <Button variant="default" onClick={onRemove}>
            Take line {place} out
          </Button>
        )}
      </div>
    </Fieldset>
  );
}

/** The sheet's recoat table, a line for each range of surface temperature. */
export function RecoatInputs({ value, onChange, errors }: PartProps<SheetFields>) {
  const { recoat } = value;
  const set = (next: readonly BandFields[]) => onChange({ ...value, recoat: next });
  return (
    <>
      {recoat.map((band, at) => (
        <BandInputs
          key={band.key}
          place={at + 1}
          path={`recoat.${at}`}
          errors={errors}
          value={band}
          onChange={(next) => set(recoat.map((each) => (each.key === band.key ? next : each)))}
          onRemove={
            recoat.length > 1
              ? () => set(recoat.filter((each) => each.key !== band.key))
              : undefined
          }
        />
      ))}
      {errors.recoat === undefined ? null : (
        <p role="alert" style={{ margin: 0 }}>
          <Mark kind="stop">{errors.recoat}</Mark>
        </p>
      )}
      {recoat.length < mostBands ? (
        <Button variant="default" onClick={() => set([...recoat, newBand(recoat)])}>
          Add a recoat line
        </Button>
      ) : null}
    </>
  );
}
