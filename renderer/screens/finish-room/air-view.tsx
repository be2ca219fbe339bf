import type { AirLook } from '../../../shared/contract/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { Mark } from '../../parts/mark.tsx';
import { Against } from './against.tsx';
import { AirScaleDrawing } from './air-scale-drawing.tsx';
import { type AirNumbers, airWords, marginWords } from './air-words.ts';
import classes from './finish-room.module.css';
import { temperatureText } from './temperature-text.ts';

interface AirViewProps {
  air: AirNumbers;
  look: AirLook | undefined;
  /** Finish whose limits are drawn; empty where none is chosen. */
  finishName: string;
  /** Read too long ago to let a coat go on. */
  isOld?: boolean;
}

function Figure({ name, value }: { name: string; value: string }) {
  return (
    <div className={classes.number}>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function Verdict({ look, finishName }: { look: AirLook; finishName: string }) {
  if (look.troubles.length > 0) {
    return <Against title="No coat in this air." sentences={look.troubles} />;
  }
  return (
    <Mark kind="done">
      {finishName === '' ? 'A coat may go on.' : `A coat of ${finishName} may go on.`}
    </Mark>
  );
}

/** Whether a coat may go on in the room's air, then the air in numbers and on its scale. */
export function AirView({ air, look, finishName, isOld = false }: AirViewProps) {
  const { airF, humidityPercent, surfaceF } = air;
  return (
    <div className={classes.stack}>
      {look === undefined || isOld ? null : <Verdict look={look} finishName={finishName} />}
      <dl className={classes.numbers}>
        <Figure name="Air" value={temperatureText(airF)} />
        <Figure name="Humidity" value={`${decimal(humidityPercent)} %`} />
        <Figure
          name="Surface"
          value={surfaceF === null ? 'not measured' : temperatureText(surfaceF)}
        />
        <Figure
          name="Dew point"
          value={look === undefined ? '...' : temperatureText(look.dewPointF)}
        />
      </dl>
      {look === undefined ? null : (
        <>
          <AirScaleDrawing
            facts={{
              airF,
              surfaceF,
              dewPointF: look.dewPointF,
              leastMarginF: look.leastMarginF,
              limitsF: look.limits?.airF ?? null,
            }}
            words={airWords(air, look)}
          />
          <p className={classes.text}>{marginWords(look)}</p>
        </>
      )}
    </div>
  );
}
