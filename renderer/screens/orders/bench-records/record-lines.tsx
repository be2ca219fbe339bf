import type {
  GlassCheck,
  RemovalRecord,
  TillerReading,
} from '../../../../shared/contract/bench-records.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import type { StrikeOutInput } from '../../../parts/strike-out.tsx';
import classes from '../order-page.module.css';
import { StrikeOut } from '../strike-out.tsx';

type BenchRecord = RemovalRecord | GlassCheck | TillerReading;
type Strike = (input: StrikeOutInput) => Promise<unknown>;

const shownFirst = 3;

function RecordLine({ record, strike }: { record: BenchRecord; strike: Strike }) {
  const isStruck = record.struckReason !== null;
  const isFailed = 'outcome' in record && record.outcome === 'not-ok';
  return (
    <li className={classes.item}>
      <div className={isStruck ? classes.struck : undefined}>
        {isFailed && !isStruck ? <Mark kind="stop">take nothing more off</Mark> : null}{' '}
        <span className={classes.words}>{record.words}</span>
        {record.note === '' || record.note === record.words ? null : (
          <p className={classes.words}>{record.note}</p>
        )}
        <p className={classes.quiet} style={{ margin: 0 }}>
          {momentText(record.at)}, {record.personName}
          {'remeasuredAt' in record && record.remeasuredAt !== null ? ', re-measured' : ''}
        </p>
      </div>
      {isStruck ? (
        <span>Struck out: {record.struckReason}</span>
      ) : (
        <StrikeOut what={`${record.words}, ${momentText(record.at)}`} record={record} fn={strike} />
      )}
    </li>
  );
}

interface RecordLinesProps {
  title: string;
  /** Newest first. */
  records: readonly BenchRecord[];
  strike: Strike;
}

/** One kind of record, the latest in full, the earlier ones folded. */
export function RecordLines({ title, records, strike }: RecordLinesProps) {
  const lines = (some: readonly BenchRecord[]) => (
    <ul className={classes.list}>
      {some.map((record) => (
        <RecordLine key={record.id} record={record} strike={strike} />
      ))}
    </ul>
  );
  return (
    <section aria-label={title}>
      <h3 style={{ margin: '8px 0 4px', fontSize: '1rem' }}>{title}</h3>
      {records.length === 0 ? (
        <p className={classes.quiet}>None yet.</p>
      ) : (
        lines(records.slice(0, shownFirst))
      )}
      {records.length > shownFirst ? (
        <Fold title={`Earlier (${records.length - shownFirst})`}>
          {lines(records.slice(shownFirst))}
        </Fold>
      ) : null}
    </section>
  );
}
