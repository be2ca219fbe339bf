import { useId } from 'react';
import { inchFraction } from '../../../shared/measure.ts';
import classes from './cut-card.module.css';
import { type LimbWork, limbSaid } from './cut-words.ts';
import { drawing, limbShape } from './limb-shape.ts';
import { limbWord } from './remeasure-entry.ts';

interface CutCardProps {
  upper: LimbWork;
  lower: LimbWork;
}

/** The bite as the limbs lie: upper above lower, fade to the left, the band that comes off hatched. */
export function CutCard({ upper, lower }: CutCardProps) {
  const cuts = [...upper.cuts, ...lower.cuts];
  const scale = {
    lengthIn: Math.max(1, ...cuts.map(({ fromFadeIn }) => fromFadeIn)),
    widestIn: Math.max(0.1, ...cuts.map(({ widthNowIn }) => widthNowIn)),
    deepestIn: Math.max(0, ...cuts.map((cut) => Math.max(cut.offLeftIn, cut.offRightIn))),
  };
  return (
    <div className={classes.card}>
      {[upper, lower].map((work) => (
        <LimbCard key={work.limb} work={work} scale={scale} />
      ))}
    </div>
  );
}

interface LimbCardProps {
  work: LimbWork;
  scale: { lengthIn: number; widestIn: number; deepestIn: number };
}

function LimbCard({ work, scale }: LimbCardProps) {
  const said = limbSaid(work);
  return (
    <section className={classes.limb} aria-label={said.title}>
      <div className={classes.said}>
        <h2 className={classes.title}>{said.title}</h2>
        <p className={classes.big}>
          {said.big}
          {said.total === null ? null : <span className={classes.total}> {said.total}</span>}
        </p>
        {said.where === null ? null : <p className={classes.where}>{said.where}</p>}
      </div>
      {work.cuts.length === 0 ? null : (
        <div className={classes.drawn}>
          <Drawing work={work} scale={scale} />
          <Widths work={work} />
        </div>
      )}
    </section>
  );
}

function Drawing({ work, scale }: LimbCardProps) {
  const hatch = useId();
  const shape = limbShape(work.cuts, scale);
  return (
    <svg
      className={classes.svg}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      preserveAspectRatio="xMinYMid meet"
      role="img"
      aria-label={`${limbWord(work.limb)} limb, fade on the left, tip on the right. The hatched edges come off, drawn deeper than they are.`}
    >
      <defs>
        <pattern
          id={hatch}
          width="9"
          height="9"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line className={classes.hatch} x1="0" y1="0" x2="0" y2="9" />
        </pattern>
      </defs>
      <path className={classes.wood} d={shape.outline} />
      {shape.stations.map(({ x, top, bottom, fromFadeIn }) => (
        <g key={fromFadeIn}>
          <line className={classes.station} x1={x} x2={x} y1={top - 6} y2={bottom + 6} />
          <text className={classes.inch} x={x} y={drawing.height - 2} textAnchor="middle">
            {inchFraction(fromFadeIn)}
          </text>
        </g>
      ))}
      {shape.cuts.map((path) => (
        <path key={path} className={classes.cut} d={path} fill={`url(#${hatch})`} />
      ))}
    </svg>
  );
}

/** Widths now and wanted at every station that is cut, for calliper and rule. */
function Widths({ work }: { work: LimbWork }) {
  const cut = work.cuts.filter(({ offLeftIn, offRightIn }) => offLeftIn + offRightIn > 1e-6);
  if (cut.length === 0) return null;
  return (
    <ul
      className={classes.widths}
      aria-label={`${limbWord(work.limb)} limb: width now, then wanted in decimals and as a fraction`}
    >
      <li aria-hidden="true">
        <span className={classes.at}>from fade</span>
        <span>now</span>
        <span className={classes.wanted}>wanted</span>
      </li>
      {cut.map(({ fromFadeIn, widthNowIn, offLeftIn, offRightIn }) => {
        const wantedIn = widthNowIn - offLeftIn - offRightIn;
        return (
          <li key={fromFadeIn}>
            <span className={classes.at}>{inchFraction(fromFadeIn)} in</span>
            <span>{widthNowIn.toFixed(3)}</span>
            <span className={classes.wanted}>{wantedIn.toFixed(3)}</span>
            <span className={classes.wanted}>{inchFraction(wantedIn, 64)}</span>
          </li>
        );
      })}
    </ul>
  );
}
