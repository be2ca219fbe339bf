import { useQuery } from '@tanstack/react-query';
import type { LastGrit, RoomBow } from '../../../shared/contract/finish.ts';
import { bowSectionLabels, bowSections, substrateLabels } from '../../../shared/finish.ts';
import { gritWithSize, type SizedGrit } from '../../../shared/grit.ts';
import { orpc } from '../../api/client.ts';
import classes from './finish-room.module.css';
import { gritKey } from './grit-key.ts';
import { GritSelect } from './grit-select.tsx';
import { gritsOnHand, partKey, type SandingFields, substratesOf } from './sanding-fields.ts';
import { Tick, TickGroup } from './tick.tsx';

interface PartProps {
  fields: SandingFields;
  onChange: (part: Partial<SandingFields>) => void;
  errors: Record<string, string>;
}

/** What was sanded: each part of the bow by what it is made of. */
export function PartTicks({ fields, onChange, errors }: PartProps) {
  const { parts } = fields;
  return (
    <TickGroup label="Sanded" error={errors.parts}>
      {bowSections.flatMap((section) =>
        substratesOf[section].map((substrate) => {
          const key = partKey(section, substrate);
          return (
            <Tick
              key={key}
              isOn={parts.includes(key)}
              onChange={(isOn) =>
                onChange({
                  parts: isOn ? [...parts, key] : parts.filter((other) => other !== key),
                })
              }
            >
              {bowSectionLabels[section]}
              {section === 'overlays' ? '' : `, ${substrateLabels[substrate].toLowerCase()}`}
            </Tick>
          );
        }),
      )}
    </TickGroup>
  );
}

/** The grit: those in the stores one tap each, every other one from the tables. */
export function GritTicks(props: PartProps & { grits: readonly SizedGrit[] }) {
  const { fields, onChange, errors, grits } = props;
  const stores = useQuery(orpc.stores.list.queryOptions());
  const onHand = gritsOnHand(stores.data?.consumables ?? []);
  const chosen = grits.find((grit) => gritKey(grit) === fields.grit);
  return (
    <div className={classes.stack}>
      {onHand.length === 0 ? null : (
        <TickGroup label="Grit, coarsest first: the grain size decides, not the number">
          {onHand.map((grit) => (
            <Tick
              key={gritKey(grit)}
              radioOf="grit"
              isOn={fields.grit === gritKey(grit)}
              onChange={() => onChange({ grit: gritKey(grit) })}
            >
              {gritWithSize(grit)}
            </Tick>
          ))}
        </TickGroup>
      )}
      <GritSelect
        label={onHand.length === 0 ? 'Grit' : 'Another grit'}
        required={onHand.length === 0}
        grits={grits}
        value={fields.grit}
        error={errors.grit ?? errors['grit.grit']}
        onChange={(grit) => onChange({ grit })}
      />
      {chosen === undefined ? null : (
        <p className={classes.quiet}>
          {gritWithSize(chosen)}: {chosen.source}
        </p>
      )}
    </div>
  );
}

/** Last grit of each part so far, with what is odd about it. */
export function LastGrits({ lastGrits }: { lastGrits: readonly LastGrit[] }) {
  if (lastGrits.length === 0) return <p className={classes.quiet}>Nothing sanded yet.</p>;
  return (
    <ul className={classes.list} aria-label="Last grits so far">
      {lastGrits.map(({ section, substrate, grit, isLast, advice }) => (
        <li key={`${section} ${substrate}`} className={classes.quiet}>
          {bowSectionLabels[section]}, {substrateLabels[substrate].toLowerCase()}:{' '}
          {gritWithSize(grit)}
          {isLast ? ', the last one before finish.' : '.'}
          {advice.map((sentence) => ` ${sentence}`)}
        </li>
      ))}
    </ul>
  );
}

interface BowTicksProps extends PartProps {
  bows: readonly RoomBow[];
}

/** Which bow. */
export function SandedBow({ fields, onChange, errors, bows }: BowTicksProps) {
  return (
    <TickGroup label="Bow" isWide error={errors.orderId}>
      {bows.map(({ orderId, number, customerName, bowLine }) => (
        <Tick
          key={orderId}
          radioOf="sanded-bow"
          isOn={fields.orderId === orderId}
          onChange={() => onChange({ orderId, parts: [] })}
        >
          <strong>
            {number} {customerName}
          </strong>
          <span>{bowLine}</span>
        </Tick>
      ))}
    </TickGroup>
  );
}
