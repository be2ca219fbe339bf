import { Checkbox, Fieldset, Stack } from '@mantine/core';
import {
  cureStepLabels,
  cureSteps,
  substrateLabels,
  substrates,
} from '../../../../shared/finish.ts';
import type { SizedGrit } from '../../../../shared/grit.ts';
import { hazardCaution, hazardLabels, hazards, whoDecides } from '../../../../shared/hazards.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { GritSelect } from '../../finish-room/grit-select.tsx';
import { type PartProps, RangeInputs } from './range-inputs.tsx';
import type { SheetFields } from './sheet-fields.ts';

/** Air it may be put on in, and how many coats. */
export function AirInputs({ value, onChange, errors }: PartProps<SheetFields>) {
  return (
    <Fieldset legend="While it is put on">
      <Stack gap="sm">
        <RangeInputs
          label="Air, F"
          unit="F"
          value={value.airF}
          errors={errors}
          path="air.airF"
          onChange={(airF) => onChange({ ...value, airF })}
        />
        <RangeInputs
          label="Humidity, percent"
          unit="%"
          value={value.humidityPercent}
          errors={errors}
          path="air.humidityPercent"
          onChange={(humidityPercent) => onChange({ ...value, humidityPercent })}
        />
        <RangeInputs
          label="Coats"
          value={value.coats}
          errors={errors}
          path="coats"
          onChange={(coats) => onChange({ ...value, coats })}
        />
      </Stack>
    </Fieldset>
  );
}

/** Four times after the last coat; none stands for another. */
export function CureInputs({ value, onChange, errors }: PartProps<SheetFields>) {
  return (
    <Fieldset legend="Hours after the last coat, at the sheet's own temperature">
      <FieldGrid>
        {cureSteps.map((step) => (
          <NumberField
            key={step}
            label={`${cureStepLabels[step]}, hours`}
            required
            unit="h"
            value={value.cure[step]}
            error={errors[`cure.${step}`]}
            onChange={(hours) => onChange({ ...value, cure: { ...value.cure, [step]: hours } })}
          />
        ))}
      </FieldGrid>
    </Fieldset>
  );
}

/** Grits that the sheet names; where it names none, the advice for the substrate counts. */
export function GritInputs(props: PartProps<SheetFields> & { grits: readonly SizedGrit[] }) {
  const { value, onChange, errors, grits } = props;
  return (
    <Fieldset legend="Grits the sheet names">
      <FieldGrid>
        {substrates.map((substrate) => (
          <GritSelect
            key={substrate}
            label={`Last grit on ${substrateLabels[substrate].toLowerCase()}`}
            none="The sheet names none"
            grits={grits}
            value={value.lastGrit[substrate]}
            error={errors[`lastGrit.${substrate}`]}
            onChange={(key) =>
              onChange({ ...value, lastGrit: { ...value.lastGrit, [substrate]: key } })
            }
          />
        ))}
        <GritSelect
          label="Scuffing between coats"
          none="The sheet names none"
          grits={grits}
          value={value.scuffGrit}
          error={errors.scuffGrit}
          onChange={(scuffGrit) => onChange({ ...value, scuffGrit })}
        />
      </FieldGrid>
    </Fieldset>
  );
}

/** What the safety data sheet warns of; the cautions show wherever it is mixed or put on. */
export function HazardInputs({ value, onChange }: PartProps<SheetFields>) {
  const toggle = (hazard: (typeof hazards)[number], isOn: boolean) =>
    onChange({
      ...value,
      hazards: hazards.filter((each) => (each === hazard ? isOn : value.hazards.includes(each))),
    });
  return (
    <Fieldset legend="What the safety data sheet warns of">
      {hazards.map((hazard) => (
        <Checkbox
          key={hazard}
          label={hazardLabels[hazard]}
          description={hazardCaution[hazard]}
          checked={value.hazards.includes(hazard)}
          onChange={(event) => toggle(hazard, event.currentTarget.checked)}
        />
      ))}
      <p style={{ margin: '12px 0 0' }}>{whoDecides}</p>
    </Fieldset>
  );
}
