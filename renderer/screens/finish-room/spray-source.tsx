import { Mark } from '../../parts/mark.tsx';
import { batchWords } from './batch-words.ts';
import classes from './finish-room.module.css';
import type { Source } from './spray-fields.ts';
import { Tick, TickGroup } from './tick.tsx';

interface SpraySourceProps {
  sources: readonly Source[];
  value: string | null;
  nowMs: number;
  error: string | undefined;
  onChange: (source: Source) => void;
}

/** Which cup, can or bottle is used, each with its clock. */
export function SpraySource({ sources, value, nowMs, error, onChange }: SpraySourceProps) {
  return (
    <TickGroup label="What is put on" isWide error={error}>
      {sources.length === 0 ? (
        <p className={classes.text}>
          No cup stands at that time. Mix a batch first, or say when the bows were coated.
        </p>
      ) : null}
      {sources.map((source) => {
        const words = source.batch === null ? null : batchWords(source.batch, nowMs);
        return (
          <Tick
            key={source.key}
            radioOf="source"
            isOn={value === source.key}
            onChange={() => onChange(source)}
          >
            <strong>{source.label}</strong>
            {words === null ? (
              <span>Straight from the container.</span>
            ) : (
              <Mark kind={words.kind}>{words.text}</Mark>
            )}
          </Tick>
        );
      })}
    </TickGroup>
  );
}
