import { Select } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import {
  bowSectionLabels,
  bowSections,
  coatPurposeLabels,
  coatPurposes,
} from '../../../shared/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { orpc } from '../../api/client.ts';
import { fullDay } from '../../parts/days.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { Source, SprayFields } from './spray-fields.ts';
import { Tick, TickGroup } from './tick.tsx';

interface PartProps {
  fields: SprayFields;
  onChange: (part: Partial<SprayFields>) => void;
  errors: Record<string, string>;
}

/** What the coat is for. */
export function PurposeTicks({ fields, onChange }: PartProps) {
  return (
    <TickGroup label="Coat">
      {coatPurposes.map((purpose) => (
        <Tick
          key={purpose}
          radioOf="purpose"
          isOn={fields.purpose === purpose}
          onChange={() => onChange({ purpose })}
        >
          {coatPurposeLabels[purpose]}
        </Tick>
      ))}
    </TickGroup>
  );
}

/** Coats of this entry, and a wet film only where it is another one than last time. */
export function FilmInputs({ fields, onChange, errors }: PartProps) {
  return (
    <FieldGrid>
      <NumberField
        label="Coats in this entry"
        required
        value={fields.coats}
        error={errors.coats}
        onChange={(coats) => onChange({ coats })}
      />
      <NumberField
        label="Wet film, mil"
        description="Only where it changed: empty is as last time."
        unit="mil"
        value={fields.wetMil}
        error={errors.wetMil}
        onChange={(wetMil) => onChange({ wetMil })}
      />
    </FieldGrid>
  );
}

const same = (all: readonly string[]) =>
  all.length === 0 ? 'the whole bow' : `${all.length} of ${bowSections.length} parts`;

/** Parts of the bows that were coated, where it was not the whole of them. */
export function SectionTicks({ fields, onChange }: PartProps) {
  const { sections } = fields;
  return (
    <Fold title="Parts coated" said={same(sections)}>
      <TickGroup label="Only these parts">
        {bowSections.map((section) => (
          <Tick
            key={section}
            isOn={sections.includes(section)}
            onChange={(isOn) =>
              onChange({
                sections: bowSections.filter((each) =>
                  each === section ? isOn : sections.includes(each),
                ),
              })
            }
          >
            {bowSectionLabels[section]}
          </Tick>
        ))}
      </TickGroup>
    </Fold>
  );
}

const noLot = { value: 'none', label: 'Not said' };

/** The lot of a can or a bottle that is used without mixing; issued where it is said how much. */
export function LotInputs({ fields, onChange, errors, source }: PartProps & { source: Source }) {
  const { resinId } = source.system;
  const stock = useQuery({
    ...orpc.stores.get.queryOptions({ input: { id: resinId ?? '' } }),
    enabled: resinId !== null,
  });
  if (resinId === null) return null;
  if (stock.error !== null) {
    return <ErrorNote error={stock.error} onAgain={() => void stock.refetch()} />;
  }
  // The fields stand from the start: what comes later must not push the buttons away.
  const isBusy = stock.data === undefined;
  const { unit, lots: all } = stock.data ?? { unit: 'mL', lots: [] };
  const lots = all.filter(({ onHand, id }) => onHand > 0 || id === fields.lotId);
  return (
    <FieldGrid>
      <WideField>
        <Select
          label="Lot"
          placeholder={
            isBusy ? 'Reading ...' : lots.length === 0 ? 'None on hand' : 'Choose the lot'
          }
          disabled={isBusy}
          data={[
            noLot,
            ...lots.map(({ id, number, lastDay, onHand }) => ({
              value: id,
              label: [
                number === '' ? 'without a number' : number,
                `${decimal(onHand, 2)} ${unit}`,
                lastDay === null ? '' : `to be used by ${fullDay(lastDay)}`,
              ]
                .filter((part) => part !== '')
                .join(', '),
            })),
          ]}
          value={fields.lotId}
          error={errors.lotId}
          onChange={(lotId) => onChange({ lotId: lotId === noLot.value ? null : lotId })}
        />
      </WideField>
      <NumberField
        label={`Used, ${unit}`}
        disabled={isBusy}
        description="Empty where nothing is taken off the stock."
        unit={unit}
        value={fields.used}
        error={errors.used}
        onChange={(used) => onChange({ used })}
      />
    </FieldGrid>
  );
}
