import { decimal, inchFraction } from '../../../shared/measure.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './panels.module.css';
import { pullText, type WeighEntry } from './weigh-entry.ts';

export function Pulls({ entry }: { entry: WeighEntry }) {
  return (
    <ol className={classes.pulls} aria-label="Pulls">
      {entry.pulls.map((pull, at) => (
        // Pulls have no name but their place.
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are only added and removed at the end
        <li key={at} className={at === 0 ? classes.dropped : undefined}>
          {pullText(pull)}
          {at === 0 ? ' (dropped)' : ''}
        </li>
      ))}
    </ol>
  );
}

interface ConditionsProps {
  entry: WeighEntry;
  scaleName: string | null;
  wide: boolean;
}

/** What the weighing stands under, as it will be saved. */
export function Conditions({ entry, scaleName, wide }: ConditionsProps) {
  return (
    <>
      <span className={classes.small}>
        Brace {inchFraction(entry.braceIn)} in, {entry.stringNote || 'string not named'}, scale{' '}
        {scaleName ?? 'not chosen'}, rig zero {decimal(entry.rigZeroLbf)} lb.
      </span>
      {wide ? <Mark kind="attention">The pulls lie far apart. Pull again if in doubt.</Mark> : null}
    </>
  );
}
