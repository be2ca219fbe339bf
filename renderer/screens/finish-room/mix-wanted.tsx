import type { RoomBow } from '../../../shared/contract/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { type MixFields, type WantedWay, wantedWayLabels, wantedWays } from './mix-fields.ts';
import { Tick, TickGroup } from './tick.tsx';

interface WantedProps {
  fields: MixFields;
  onChange: (part: Partial<MixFields>) => void;
  errors: Record<string, string>;
  /** Bows of this finish that wait for coats. */
  bows: readonly RoomBow[];
}

function BowTicks({ fields, onChange, bows }: WantedProps) {
  const { orderIds } = fields;
  return (
    <TickGroup label="Bows it is for" isWide>
      {bows.map(({ orderId, number, customerName, bowLine, areaIn2 }) => (
        <Tick
          key={orderId}
          isOn={orderIds.includes(orderId)}
          onChange={(isOn) =>
            onChange({
              orderIds: isOn
                ? [...orderIds, orderId]
                : orderIds.filter((other) => other !== orderId),
            })
          }
        >
          <strong>
            {number} {customerName}
          </strong>
          <span>
            {bowLine},{' '}
            {areaIn2 === null ? 'limbs not measured' : `${decimal(areaIn2, 0)} square inches`}
          </span>
        </Tick>
      ))}
    </TickGroup>
  );
}

function ForBows(props: WantedProps) {
  const { fields, onChange, errors, bows } = props;
  return (
    <>
      {bows.length === 0 ? (
        <p style={{ margin: 0 }}>No bow of this finish waits for a coat. Give an area instead.</p>
      ) : (
        <BowTicks {...props} />
      )}
      <FieldGrid>
        <NumberField
          label="Coats from this cup"
          required
          value={fields.coats}
          error={errors['wanted.coats']}
          onChange={(coats) => onChange({ coats })}
        />
        <NumberField
          label="Wet film of a coat, mil"
          description="Empty: the middle of the sheet's range."
          unit="mil"
          value={fields.wetMil}
          error={errors['wanted.wetMil']}
          onChange={(wetMil) => onChange({ wetMil })}
        />
        <NumberField
          label="More area, square inches"
          description="Test pieces, or a bow whose limbs were not measured."
          unit="in²"
          value={fields.moreAreaIn2}
          error={errors['wanted.moreAreaIn2']}
          onChange={(moreAreaIn2) => onChange({ moreAreaIn2 })}
        />
        <NumberField
          label="Stays in the gun, mL"
          unit="mL"
          value={fields.leftInGunMl}
          error={errors['wanted.leftInGunMl']}
          onChange={(leftInGunMl) => onChange({ leftInGunMl })}
        />
      </FieldGrid>
    </>
  );
}

/** How much is wanted: for bows, by their area, or straight by volume or weight. */
export function MixWanted(props: WantedProps) {
  const { fields, onChange, errors } = props;
  const choose = (way: WantedWay) => onChange({ way });
  return (
    <>
      <TickGroup label="How much">
        {wantedWays.map((way) => (
          <Tick key={way} radioOf="wanted" isOn={fields.way === way} onChange={() => choose(way)}>
            {wantedWayLabels[way]}
          </Tick>
        ))}
      </TickGroup>
      {fields.way === 'bows' ? <ForBows {...props} /> : null}
      {fields.way === 'volume' ? (
        <NumberField
          label="Ready mix, mL"
          unit="mL"
          required
          value={fields.ml}
          error={errors['wanted.ml']}
          onChange={(ml) => onChange({ ml })}
        />
      ) : null}
      {fields.way === 'weight' ? (
        <NumberField
          label="Ready mix, g"
          unit="g"
          required
          value={fields.g}
          error={errors['wanted.g']}
          onChange={(g) => onChange({ g })}
        />
      ) : null}
    </>
  );
}
