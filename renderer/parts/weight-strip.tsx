import { type StripFacts, type StripMark, weightStrip } from '../../shared/weight-strip.ts';
import classes from './weight-strip.module.css';

const width = 320;
const edge = 9;
const middle = 12;
const x = (place: number) => edge + place * (width - 2 * edge);

function Drawn({ mark }: { mark: StripMark }) {
  const at = x(mark.at);
  const to = x(mark.to ?? mark.at);
  switch (mark.kind) {
    case 'arrival':
      return <circle className={classes.ring} cx={at} cy={middle} r={7} />;
    // Smaller than the ring, so that both show while nothing has come off yet.
    case 'now':
      return <circle className={classes.dot} cx={at} cy={middle} r={4.5} />;
    case 'target':
      return <line className={classes.target} x1={at} x2={at} y1={2} y2={22} />;
    case 'stop-band':
      return (
        <path
          className={classes.band}
          d={`M${at + 4} 4H${at}V20H${at + 4}M${to - 4} 4H${to}V20H${to - 4}`}
        />
      );
    case 'forecast':
      return <path className={classes.forecast} d={`M${at} 6H${to}V18H${at}Z`} />;
  }
}

interface WeightStripProps {
  facts: StripFacts;
  /** Written under the scale; the strip's own words when left out. Pass null to write none. */
  text?: string | null;
}

/** The weight story of a job on one thin scale in pounds; its numbers are always text too. */
export function WeightStrip({ facts, text }: WeightStripProps) {
  const strip = weightStrip(facts);
  const words = text === undefined ? strip.text : text;
  return (
    <span className={classes.strip}>
      <svg
        className={classes.svg}
        viewBox={`0 0 ${width} 24`}
        role="img"
        aria-label={`Weights: ${strip.text}`}
      >
        <line className={classes.rule} x1={edge} x2={width - edge} y1={middle} y2={middle} />
        {strip.ticks.map((place) => (
          <line className={classes.tick} key={place} x1={x(place)} x2={x(place)} y1={9} y2={15} />
        ))}
        {strip.marks.map((mark) => (
          <Drawn key={mark.kind} mark={mark} />
        ))}
      </svg>
      {words === null ? null : <span className={classes.text}>{words}</span>}
    </span>
  );
}
