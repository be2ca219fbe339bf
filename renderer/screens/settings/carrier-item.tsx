import { Button } from '@mantine/core';
import type { Carrier } from '../../../shared/contract/carriers.ts';
import { fullDay } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { isStale, limitWords, surchargeWords, volumeWords } from './carrier-words.ts';
import classes from './scale-item.module.css';

interface CarrierItemProps {
  carrier: Carrier;
  isOwner: boolean;
  onEdit: () => void;
}

/** One carrier: what it takes, what costs more, and how old the figures are. */
export function CarrierItem({ carrier, isOwner, onEdit }: CarrierItemProps) {
  const { name, asOf, profile, claimDays, active } = carrier;
  const accepted = limitWords(profile.accepted);
  return (
    <article className={classes.scale} aria-label={name}>
      <div className={classes.words}>
        <span className={classes.name}>{name}</span>
        {active ? null : <Mark kind="attention">Out of use</Mark>}
        {isStale(asOf) ? (
          <Mark kind="attention">
            Figures of {fullDay(asOf)}: over a year old. Look them up again.
          </Mark>
        ) : (
          <span className={classes.quiet}>Figures of {fullDay(asOf)}.</span>
        )}
        <span>Takes up to: {accepted === '' ? 'no limit given' : accepted}.</span>
        {profile.surcharges.map((each) => (
          <span key={each.name} className={classes.quiet}>
            {surchargeWords(each)}
            {each.minimumLb === undefined ? '' : `, charged as ${each.minimumLb} lb at least`}.
          </span>
        ))}
        <span className={classes.quiet}>
          {volumeWords(profile)} Claims within {claimDays} days.
        </span>
      </div>
      {isOwner ? (
        <Button variant="default" onClick={onEdit} aria-label={`Change ${name}`}>
          Change
        </Button>
      ) : null}
    </article>
  );
}
