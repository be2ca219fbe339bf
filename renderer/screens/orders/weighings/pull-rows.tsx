import { Button } from '@mantine/core';
import type { DrawReference } from '../../../../shared/bows.ts';
import { decimal } from '../../../../shared/measure.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { givenPulls, isBlank, liveWeights, type TypedPull } from './live-weights.ts';
import { newPull } from './weighing-fields.ts';
import classes from './weighings.module.css';

interface PullRowsProps {
  pulls: TypedPull[];
  onChange: (pulls: TypedPull[]) => void;
  reference: DrawReference;
  rigZeroLbf: number;
  maxSafeDrawIn: number | null;
  /** By path, as the contract names them: `pulls.0.forceLbf`. */
  errors: Record<string, string>;
}

/** Pulls as they are made, one a row, and what they come to so far. */
export function PullRows(props: PullRowsProps) {
  const { pulls, onChange, reference, rigZeroLbf, maxSafeDrawIn, errors } = props;
  const change = (key: number, part: Partial<TypedPull>) =>
    onChange(pulls.map((pull) => (pull.key === key ? { ...pull, ...part } : pull)));
  const add = () => {
    const last = pulls.at(-1);
    onChange([...pulls, newPull((last?.key ?? 0) + 1, last?.drawIn ?? null)]);
  };
  const written = pulls.filter((pull) => !isBlank(pull));
  const firstKey = (written[0] ?? pulls[0])?.key;
  const tooFar = (drawIn: number | null) =>
    drawIn !== null && maxSafeDrawIn !== null && drawIn > maxSafeDrawIn
      ? `Past the maximum safe draw of ${decimal(maxSafeDrawIn, 2)}".`
      : undefined;
  return (
    <fieldset className={classes.pulls}>
      <legend>Pulls, on the way up. The first one settles limbs and rig and is dropped.</legend>
      {pulls.map((pull, index) => {
        const path = `pulls.${written.indexOf(pull)}`;
        const isFirst = pull.key === firstKey;
        return (
          <div key={pull.key} className={classes.pull}>
            <NumberField
              label={`Pull ${index + 1}, draw`}
              unit="in"
              value={pull.drawIn}
              error={tooFar(pull.drawIn) ?? errors[`${path}.drawIn`]}
              onChange={(drawIn) => change(pull.key, { drawIn })}
            />
            <NumberField
              label={`Pull ${index + 1}, force`}
              unit="lb"
              value={pull.forceLbf}
              error={errors[`${path}.forceLbf`]}
              onChange={(forceLbf) => change(pull.key, { forceLbf })}
            />
            <span className={classes.dropped}>{isFirst ? 'dropped' : ''}</span>
          </div>
        );
      })}
      {errors.pulls === undefined ? null : (
        <p className={classes.error} role="alert">
          {errors.pulls}
        </p>
      )}
      <div className={classes.after}>
        <Button variant="default" onClick={add} disabled={pulls.length >= 40}>
          Add a pull
        </Button>
        <output className={classes.live} aria-live="polite">
          {liveWeights(givenPulls(pulls), rigZeroLbf, reference).map((weight) => (
            <span key={weight.drawIn}>
              <strong>{weight.text}</strong> mean of {weight.pulls}
            </span>
          ))}
        </output>
      </div>
    </fieldset>
  );
}
