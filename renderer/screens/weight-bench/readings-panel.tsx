import { Button } from '@mantine/core';
import { FieldGrid } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Panel } from '../../parts/panel.tsx';
import { useDesk } from './desk-context.tsx';
import { Figure, MaybeFigure } from './figure.tsx';
import classes from './weight-bench.module.css';

const mostReadings = 40;

/** Weights of one session along the draw, from which the force-draw curve is fitted. */
export function ReadingsPanel() {
  const { input, change, errors } = useDesk();
  const { readings } = input;
  const set = (index: number, part: Partial<(typeof readings)[number]>) =>
    change({
      ...input,
      readings: readings.map((one, i) => (i === index ? { ...one, ...part } : one)),
    });
  const isWrong = Object.keys(errors).some((path) => path.startsWith('readings'));
  const last = readings.at(-1);
  return (
    <Panel title="Readings">
      <FieldGrid>
        <MaybeFigure
          label="Customer's own draw (in, AMO)"
          unit="in"
          description="Empty where nobody knows."
          value={input.ownDrawIn}
          error={errors.ownDrawIn}
          onChange={(ownDrawIn) => change({ ...input, ownDrawIn })}
        />
      </FieldGrid>
      <Fold
        title="Weights along the draw"
        said={readings.length === 0 ? 'none' : String(readings.length)}
        isWrong={isWrong}
      >
        <ul className={classes.readings}>
          {readings.map((reading, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: readings have no other name.
            <li key={i}>
              <Figure
                label={`Reading ${i + 1}, draw (in)`}
                unit="in"
                value={reading.drawIn}
                error={errors[`readings.${i}.drawIn`]}
                onChange={(drawIn) => set(i, { drawIn })}
              />
              <Figure
                label="Weight (lb)"
                unit="lb"
                value={reading.forceLbf}
                error={errors[`readings.${i}.forceLbf`]}
                onChange={(forceLbf) => set(i, { forceLbf })}
              />
              <Button
                variant="subtle"
                color="gray"
                c="dimmed"
                px={0}
                aria-label={`Take out reading ${i + 1}`}
                onClick={() => change({ ...input, readings: readings.filter((_, at) => at !== i) })}
              >
                Take out
              </Button>
            </li>
          ))}
        </ul>
        <Button
          variant="default"
          disabled={readings.length >= mostReadings}
          onClick={() => {
            const { drawIn, weightLbf: forceLbf } = input.wish;
            const next =
              last === undefined
                ? { drawIn, forceLbf }
                : { drawIn: last.drawIn + 1, forceLbf: Number.NaN };
            change({ ...input, readings: [...readings, next] });
          }}
        >
          Add a reading
        </Button>
      </Fold>
    </Panel>
  );
}
