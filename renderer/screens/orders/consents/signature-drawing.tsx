import type { SVGProps } from 'react';
import { type Stroke, signatureBox } from '../../../../shared/signatures.ts';
import classes from './signature.module.css';

const { widthIn, heightIn } = signatureBox;

/** A point alone is a dot: a line of no length with a round cap. */
const pathOf = (points: Stroke) =>
  points.length === 1
    ? `M${points[0]?.join(' ')}h0`
    : points.map((point, i) => `${i === 0 ? 'M' : 'L'}${point.join(' ')}`).join('');

type DrawingProps = { strokes: readonly Stroke[]; label: string } & SVGProps<SVGSVGElement>;

/** Strokes in the signature box, drawn in inches. */
export function SignatureDrawing({ strokes, label, ...rest }: DrawingProps) {
  return (
    <svg
      className={classes.box}
      viewBox={`0 0 ${widthIn} ${heightIn}`}
      role="img"
      aria-label={label}
      {...rest}
    >
      <title>{label}</title>
      <line className={classes.base} x1={0.15} x2={widthIn - 0.15} y1={1} y2={1} />
      {strokes.map((points, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: strokes are only added and taken off at the end.
        <path key={i} className={classes.ink} d={pathOf(points)} />
      ))}
    </svg>
  );
}
