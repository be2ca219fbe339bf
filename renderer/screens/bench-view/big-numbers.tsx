import classes from './big-numbers.module.css';
import { noNumber } from './seen-text.ts';

interface BigNumbersProps {
  now: string;
  /** What the number now rests on: spread, or that it is a forecast. */
  nowNote: string;
  stopAt: string | null;
  target: string | null;
  /** `lb @ 28"`. */
  unit: string;
}

/** The number row. The first is read from six feet away: digits an inch and a half tall. */
export function BigNumbers({ now, nowNote, stopAt, target, unit }: BigNumbersProps) {
  return (
    <dl className={classes.row} aria-label="Weights">
      <div className={classes.now}>
        <dt>
          Now <span className={classes.note}>{nowNote}</span>
        </dt>
        <dd className={`${classes.huge} ${now === noNumber ? classes.none : ''}`}>
          <span>{now}</span>
        </dd>
      </div>
      {stopAt === null ? null : (
        <div className={classes.other}>
          <dt>Stop at</dt>
          <dd>{stopAt}</dd>
        </div>
      )}
      {target === null ? null : (
        <div className={classes.other}>
          <dt>
            Target <span className={classes.unit}>{unit}</span>
          </dt>
          <dd>{target}</dd>
        </div>
      )}
    </dl>
  );
}
