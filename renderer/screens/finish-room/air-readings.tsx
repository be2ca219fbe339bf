import { useQuery } from '@tanstack/react-query';
import type { AirReading } from '../../../shared/contract/finish.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { momentText } from '../../parts/days.ts';
import { Fold } from '../../parts/fold.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { StrikeOutButton } from '../../parts/strike-out.tsx';
import { airWords } from './air-words.ts';
import classes from './finish-room.module.css';
import { temperatureText } from './temperature-text.ts';

function Reading({ reading }: { reading: AirReading }) {
  const command = useCommand(api.finish.strikeOutAir);
  const { at, personName, note, dewPointF, struckReason } = reading;
  return (
    <li className={classes.item}>
      <span style={struckReason === null ? undefined : { textDecoration: 'line-through' }}>
        {momentText(at)}: {airWords(reading, undefined)}, dew point {temperatureText(dewPointF)}
      </span>
      <span className={classes.quiet}>{[personName, note].filter(Boolean).join('. ')}</span>
      {struckReason === null ? (
        <StrikeOutButton what={`the air of ${momentText(at)}`} record={reading} command={command} />
      ) : (
        <span>Struck out: {struckReason}</span>
      )}
    </li>
  );
}

function Readings() {
  const readings = useQuery(orpc.finish.airReadings.queryOptions());
  if (readings.error !== null) {
    return <ErrorNote error={readings.error} onAgain={() => void readings.refetch()} />;
  }
  if (readings.data === undefined) return <BusyNote />;
  return (
    <ul className={classes.list}>
      {readings.data.map((reading) => (
        <Reading key={reading.id} reading={reading} />
      ))}
    </ul>
  );
}

/** Earlier readings of the air, read when they are asked for. */
export function AirReadings() {
  return (
    <Fold title="All readings of the air">
      <Readings />
    </Fold>
  );
}
