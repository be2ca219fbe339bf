import type { RoomBow } from '../../../shared/contract/finish.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { Mark } from '../../parts/mark.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import classes from './finish-room.module.css';
import { GritSelect } from './grit-select.tsx';
import { type SprayedBow, type SprayFields, untouched } from './spray-fields.ts';
import { Tick, TickGroup } from './tick.tsx';
import { byUrgency, coatsText, windowWords } from './window-words.ts';

interface SprayBowsProps {
  bows: readonly RoomBow[];
  value: SprayFields['bows'];
  grits: readonly SizedGrit[];
  error: string | undefined;
  onChange: (bows: SprayFields['bows']) => void;
}

const without = (bows: SprayFields['bows'], orderId: string) =>
  Object.fromEntries(Object.entries(bows).filter(([other]) => other !== orderId));

interface DetailProps {
  bow: RoomBow;
  value: SprayedBow;
  grits: readonly SizedGrit[];
  onChange: (value: SprayedBow) => void;
}

/** Scuffing and surface, where the bow was coated before. */
function Detail({ bow, value, grits, onChange }: DetailProps) {
  return (
    <div className={classes.stack}>
      {bow.window === null ? null : (
        <Tick isOn={value.isScuffed} onChange={(isScuffed) => onChange({ ...value, isScuffed })}>
          {bow.number}: the film was scuffed
        </Tick>
      )}
      <FieldGrid>
        {value.isScuffed ? (
          <GritSelect
            label={`${bow.number}: scuffed with`}
            none="Not said"
            grits={grits}
            value={value.scuffGrit}
            onChange={(scuffGrit) => onChange({ ...value, scuffGrit })}
          />
        ) : null}
        <NumberField
          label={`${bow.number}: surface, F`}
          description="Empty: as read with the air, or the room's."
          unit="F"
          value={value.surfaceF}
          onChange={(surfaceF) => onChange({ ...value, surfaceF })}
        />
      </FieldGrid>
    </div>
  );
}

/** Bows of the session: one tick each, their window beside it in words. */
export function SprayBows({ bows, value, grits, error, onChange }: SprayBowsProps) {
  const ordered = byUrgency(bows);
  return (
    <TickGroup label="Bows" isWide error={error}>
      {ordered.length === 0 ? <p className={classes.text}>No bow waits for this finish.</p> : null}
      {ordered.map((bow) => {
        const { orderId, number, customerName, bowLine, onHold } = bow;
        const chosen = value[orderId];
        const { kind, text } = windowWords(bow);
        return (
          <div key={orderId} className={classes.stack}>
            <Tick
              isOn={chosen !== undefined}
              onChange={(isOn) =>
                onChange(isOn ? { ...value, [orderId]: untouched } : without(value, orderId))
              }
            >
              <strong>
                {number} {customerName}
              </strong>
              <span>
                {bowLine}, {coatsText(bow)}
              </span>
              <Mark kind={kind}>{text}</Mark>
              {onHold ? <Mark kind="attention">On hold</Mark> : null}
              {bow.window?.doubts.map((doubt) => (
                <span key={doubt} className={classes.quiet}>
                  {doubt}
                </span>
              ))}
            </Tick>
            {chosen === undefined ? null : (
              <Detail
                bow={bow}
                value={chosen}
                grits={grits}
                onChange={(next) => onChange({ ...value, [orderId]: next })}
              />
            )}
          </div>
        );
      })}
    </TickGroup>
  );
}
