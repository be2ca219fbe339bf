import { whoDecides } from '../../../shared/hazards.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './finish-room.module.css';

/** What the hazards of a finish ask for, where it is mixed or put on. */
export function Cautions({ cautions }: { cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <ul className={classes.cautions} aria-label="Cautions">
      {cautions
        .filter((caution) => caution !== whoDecides)
        .map((caution) => (
          <li key={caution}>
            <Mark kind="attention">{caution}</Mark>
          </li>
        ))}
      <li className={classes.ink}>{whoDecides}</li>
    </ul>
  );
}
