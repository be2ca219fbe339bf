import { lazy, Suspense } from 'react';
import { Fold } from '../fold.tsx';
import { BusyNote } from '../notes.tsx';
import { chartRows, thinned } from './chart-rows.ts';
import type { ChartData, ChartSeries } from './chart-types.ts';
import classes from './charts.module.css';

const XyChart = lazy(() => import('./xy-chart.tsx'));

interface ChartFigureProps {
  title: string;
  /** The picture in a sentence or two. */
  caption: string;
  data: ChartData;
  height?: number;
}

function Sample({ kind, tone, isDashed }: Pick<ChartSeries, 'kind' | 'tone' | 'isDashed'>) {
  const stroke = `var(--${tone})`;
  return (
    <svg className={classes.sample} viewBox="0 0 28 12" aria-hidden="true">
      {kind === 'line' ? (
        <line
          x1="0"
          x2="28"
          y1="6"
          y2="6"
          stroke={stroke}
          strokeWidth="2"
          strokeDasharray={isDashed === true ? '7 5' : undefined}
        />
      ) : (
        <circle cx="14" cy="6" r="4.5" fill="none" stroke={stroke} strokeWidth="2.5" />
      )}
    </svg>
  );
}

function Numbers({ data, title }: { data: ChartData; title: string }) {
  const series = data.series.map((one) => ({ ...one, points: thinned(one.points) }));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the panel scrolls by keyboard.
    <section className={classes.scroll} aria-label={`Numbers of ${title}`} tabIndex={0}>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">{data.xLabel}</th>
            {series.map(({ name }) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chartRows(series).map((row) => (
            <tr key={row.x}>
              <th scope="row">{data.xNames?.get(row.x) ?? row.x.toFixed(data.xDigits)}</th>
              {series.map(({ name }) => (
                <td key={name}>{row[name]?.toFixed(data.yDigits) ?? ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** A chart with what it shows in words, and its numbers as a table. */
export function ChartFigure({ title, caption, data, height = 260 }: ChartFigureProps) {
  return (
    <figure className={classes.figure}>
      <h3 className={classes.title}>{title}</h3>
      <figcaption className={classes.caption}>{caption}</figcaption>
      <ul className={classes.legend}>
        {data.series.map(({ name, ...look }) => (
          <li key={name}>
            <Sample {...look} />
            {name}
          </li>
        ))}
      </ul>
      <div style={{ height }} aria-hidden="true">
        <Suspense fallback={<BusyNote>Drawing ...</BusyNote>}>
          <XyChart data={data} height={height} />
        </Suspense>
      </div>
      <Fold title="Its numbers" hasRule={false}>
        <Numbers data={data} title={title} />
      </Fold>
    </figure>
  );
}
