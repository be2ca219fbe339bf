import type { ForecastJob } from '../../../shared/contract/learned.ts';
import { decimal } from '../../../shared/measure.ts';
import { type DropScale, dropBand, dropScale, frame } from './drop-scale.ts';
import classes from './owner.module.css';

const bottom = frame.height - frame.bottom;

function Axes({ scale }: { scale: DropScale }) {
  return (
    <g className={classes.axes}>
      {scale.ticks.map((tick) => (
        <g key={tick}>
          <line
            x1={frame.left}
            x2={frame.width - frame.right}
            y1={scale.y(tick)}
            y2={scale.y(tick)}
          />
          <text x={frame.left - 8} y={scale.y(tick)} textAnchor="end" dominantBaseline="middle">
            {decimal(tick)}
          </text>
          <text x={scale.x(tick)} y={bottom + 18} textAnchor="middle">
            {decimal(tick)}
          </text>
        </g>
      ))}
      <text x={(frame.left + frame.width) / 2} y={frame.height - 8} textAnchor="middle">
        Predicted drop, lb
      </text>
      <text transform={`translate(14 ${(frame.top + bottom) / 2}) rotate(-90)`} textAnchor="middle">
        Measured drop, lb
      </text>
    </g>
  );
}

/** Dots for what ended inside its band, crosses for what did not: told apart without colour. */
function Job({ job, scale }: { job: ForecastJob; scale: DropScale }) {
  const [x, y] = [scale.x(job.forecastDropLbf), scale.y(job.measuredDropLbf)];
  const [low, high] = dropBand(job);
  return (
    <g className={job.isInside ? classes.inside : classes.outside}>
      <title>
        {`${job.orderNumber}: predicted ${decimal(job.forecastDropLbf)} lb, measured ${decimal(job.measuredDropLbf)} lb, ${job.isInside ? 'inside' : 'outside'} the band`}
      </title>
      <line className={classes.band} x1={x} x2={x} y1={scale.y(low)} y2={scale.y(high)} />
      {job.isInside ? (
        <circle cx={x} cy={y} r={4.5} />
      ) : (
        <path d={`M${x - 5} ${y - 5}l10 10m0-10l-10 10`} />
      )}
    </g>
  );
}

/** Predicted against measured drop of closed jobs; the table beside it says the same in figures. */
export function DropChart({ jobs }: { jobs: readonly ForecastJob[] }) {
  const scale = dropScale(jobs);
  const inside = jobs.filter(({ isInside }) => isInside).length;
  return (
    <figure className={classes.figure}>
      <svg
        viewBox={`0 0 ${frame.width} ${frame.height}`}
        role="img"
        aria-label={`Predicted against measured drop of ${jobs.length} closed jobs, ${inside} of them inside their band. Every figure is in the table.`}
      >
        <Axes scale={scale} />
        <line
          className={classes.equal}
          x1={scale.x(scale.low)}
          y1={scale.y(scale.low)}
          x2={scale.x(scale.high)}
          y2={scale.y(scale.high)}
        />
        {jobs.map((job) => (
          <Job key={job.orderId} job={job} scale={scale} />
        ))}
      </svg>
      <figcaption className={classes.legend}>
        <span>
          <svg
            width="14"
            height="14"
            viewBox="0 0 14 14"
            aria-hidden="true"
            className={classes.inside}
          >
            <circle cx="7" cy="7" r="4.5" />
          </svg>
          inside its band
        </span>
        <span>
          <svg
            width="14"
            height="14"
            viewBox="0 0 14 14"
            aria-hidden="true"
            className={classes.outside}
          >
            <path d="M2 2l10 10m0-10l-10 10" />
          </svg>
          outside its band
        </span>
        <span>Upright lines: the band that eight in ten should end in.</span>
        <span>Dashed: as predicted. Above it more weight came off.</span>
      </figcaption>
    </figure>
  );
}
