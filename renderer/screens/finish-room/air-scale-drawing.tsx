import classes from './air-scale.module.css';
import { type AirFacts, type AirMark, airScale } from './air-scale.ts';

const width = 440;
const height = 64;
const edge = 16;
const middle = 26;
const x = (place: number) => edge + place * (width - 2 * edge);

function Drawn({ mark }: { mark: AirMark }) {
  const at = x(mark.at);
  const to = x(mark.to ?? mark.at);
  switch (mark.kind) {
    case 'dew':
      return <rect className={classes.dew} x={at} y={12} width={to - at} height={28} />;
    case 'too-close':
      return <rect className={classes.close} x={at} y={12} width={to - at} height={28} />;
    case 'limits':
      return (
        <path
          className={classes.limits}
          d={`M${at + 6} 8H${at}V44H${at + 6}M${to - 6} 8H${to}V44H${to - 6}`}
        />
      );
    case 'air':
      return <circle className={classes.air} cx={at} cy={middle} r={9} />;
    case 'surface':
      return <circle className={classes.surface} cx={at} cy={middle} r={5.5} />;
  }
}

const legend: readonly { kind: AirMark['kind']; text: string }[] = [
  { kind: 'air', text: 'air' },
  { kind: 'surface', text: 'surface' },
  { kind: 'limits', text: "the sheet's air" },
  { kind: 'too-close', text: 'too close to the dew point' },
  { kind: 'dew', text: 'dew forms' },
];

function Sample({ kind }: { kind: AirMark['kind'] }) {
  return (
    <svg className={classes.sample} viewBox="0 0 28 20" aria-hidden="true">
      {kind === 'dew' ? <rect className={classes.dew} x={1} y={2} width={26} height={16} /> : null}
      {kind === 'too-close' ? (
        <rect className={classes.close} x={1} y={2} width={26} height={16} />
      ) : null}
      {kind === 'limits' ? <path className={classes.limits} d="M8 2H2V18H8M20 2H26V18H20" /> : null}
      {kind === 'air' ? <circle className={classes.air} cx={14} cy={10} r={8} /> : null}
      {kind === 'surface' ? <circle className={classes.surface} cx={14} cy={10} r={5.5} /> : null}
    </svg>
  );
}

/** The room on one scale in Fahrenheit; its numbers are text beside it. */
export function AirScaleDrawing({ facts, words }: { facts: AirFacts; words: string }) {
  const scale = airScale(facts);
  if (scale === null) return null;
  const shown = new Set(scale.marks.map(({ kind }) => kind));
  return (
    <figure className={classes.figure}>
      <svg
        className={classes.svg}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`Air: ${words}`}
      >
        <defs>
          <pattern id="dew-lines" width="6" height="6" patternUnits="userSpaceOnUse">
            <path className={classes.hatch} d="M0 6 6 0" />
          </pattern>
        </defs>
        <line className={classes.rule} x1={edge} x2={width - edge} y1={middle} y2={middle} />
        {scale.marks.map((mark) => (
          <Drawn key={mark.kind} mark={mark} />
        ))}
        {scale.ticks.map(({ at, text }) => (
          <g key={text}>
            <line className={classes.tick} x1={x(at)} x2={x(at)} y1={40} y2={46} />
            <text className={classes.number} x={x(at)} y={60} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        <ul className={classes.legend}>
          {legend
            .filter(({ kind }) => shown.has(kind))
            .map(({ kind, text }) => (
              <li key={kind}>
                <Sample kind={kind} />
                {text}
              </li>
            ))}
        </ul>
      </figcaption>
    </figure>
  );
}
