import { useId } from 'react';
import classes from './limb-drawing.module.css';
import { type LimbPaths, placeOf, sheet } from './limb-geometry.ts';
import { handlePx, haveRoom, narrowestPx, type StationHandle } from './station-handles.ts';
import { StationPicker } from './station-picker.tsx';

interface LimbDrawingProps {
  title: string;
  /** The drawing in words. */
  label: string;
  paths: LimbPaths;
  lengthIn: number;
  /** From and to, inches from the fade. */
  hinges: readonly (readonly [number, number])[];
  handles: readonly StationHandle[];
  onChoose?: ((index: number) => void) | undefined;
}

/** A limb as it lies, fade left and tip right, with its stations to take hold of under it. */
export function LimbDrawing(props: LimbDrawingProps) {
  const { title, label, paths, lengthIn, hinges, handles, onChoose } = props;
  const hatch = useId();
  const isRoomy = haveRoom(handles, lengthIn);
  return (
    <section className={classes.limb} aria-label={`${title} limb`}>
      <h3 className={classes.title}>{title}</h3>
      <div className={classes.drawn} style={{ minWidth: narrowestPx }}>
        <svg
          className={classes.svg}
          viewBox={`0 0 ${sheet.width} ${paths.height.toFixed(1)}`}
          role="img"
          aria-label={label}
        >
          <defs>
            <pattern
              id={hatch}
              width="4"
              height="4"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <line className={classes.hatch} x1="0" y1="0" x2="0" y2="4" />
            </pattern>
          </defs>
          <path className={classes.wood} d={paths.outline} />
          <line
            className={classes.centre}
            x1={sheet.side}
            x2={placeOf(lengthIn, lengthIn)}
            y1={paths.middle}
            y2={paths.middle}
          />
          {handles.map(({ fromFadeIn, isChosen }) => (
            <line
              key={fromFadeIn}
              className={isChosen ? classes.chosen : classes.station}
              x1={placeOf(fromFadeIn, lengthIn)}
              x2={placeOf(fromFadeIn, lengthIn)}
              y1={2}
              y2={paths.height}
            />
          ))}
          {paths.bands.map((d) => (
            <path key={d} className={classes.band} d={d} fill={`url(#${hatch})`} />
          ))}
          {paths.newEdges.map((d) => (
            <path key={d} className={classes.next} d={d} />
          ))}
          <path className={classes.present} d={paths.outline} />
          {hinges.map(([from, to]) => (
            <g key={`${from} ${to}`}>
              <path
                className={classes.hinge}
                d={`M${placeOf(from, lengthIn) - 3} 1V7H${placeOf(to, lengthIn) + 3}V1`}
              />
              <text className={classes.hingeWord} x={placeOf(to, lengthIn) + 8} y={9}>
                hinge
              </text>
            </g>
          ))}
        </svg>
        {onChoose !== undefined && isRoomy ? (
          <div className={classes.handles}>
            {handles.map((handle, i) => (
              <button
                key={handle.fromFadeIn}
                type="button"
                className={classes.handle}
                aria-pressed={handle.isChosen}
                aria-label={handle.label}
                style={{
                  left: `${(100 * placeOf(handle.fromFadeIn, lengthIn)) / sheet.width}%`,
                  width: handlePx(handle),
                }}
                onClick={() => onChoose(i)}
              >
                {handle.text}
              </button>
            ))}
          </div>
        ) : null}
      </div>
      {onChoose === undefined || isRoomy ? null : (
        <StationPicker title={title} handles={handles} onChoose={onChoose} />
      )}
    </section>
  );
}
