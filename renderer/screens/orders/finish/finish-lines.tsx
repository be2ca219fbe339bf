import type { Coat, Sanding } from '../../../../shared/contract/finish.ts';
import { api } from '../../../api/client.ts';
import { momentText } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { StrikeOut } from '../strike-out.tsx';
import { coatedWords, coatWords, sandingWords } from './finish-words.ts';

const shownFirst = 4;

interface LineProps {
  record: { id: string; rowVersion: number; struckReason: string | null };
  words: string;
  /** When, by whom, from what. */
  about: string;
  fn: Parameters<typeof StrikeOut>[0]['fn'];
  /** Let pass by the owner, and why. */
  passed?: string | null;
}

function Line({ record, words, about, fn, passed = null }: LineProps) {
  const isStruck = record.struckReason !== null;
  return (
    <li className={classes.item}>
      <div className={isStruck ? classes.struck : undefined}>
        <span className={classes.words}>{words}</span>
        <p className={classes.quiet}>{about}</p>
      </div>
      {passed === null || isStruck ? null : (
        <Mark kind="attention">The owner let it pass: {passed}</Mark>
      )}
      {isStruck ? (
        <span>Struck out: {record.struckReason}</span>
      ) : (
        <StrikeOut what={`${words}, ${about}`} record={record} fn={fn} />
      )}
    </li>
  );
}

interface CoatLinesProps {
  coats: readonly Coat[];
  /** A gate ahead counts from a coat, and the order has left Finish, where coats are recorded. */
  isMissed: boolean;
}

/** Coats, newest first. */
export function CoatLines({ coats, isMissed }: CoatLinesProps) {
  if (coats.length === 0 && isMissed) {
    return (
      <p className={classes.words}>
        <Mark kind="attention">
          No coat recorded. Move the bow back to Finish, then record the coat in the finish room
          with the time it went on.
        </Mark>
      </p>
    );
  }
  if (coats.length === 0) return <p className={classes.quiet}>No coat yet.</p>;
  return (
    <ul className={classes.list} aria-label="Coats">
      {coats.map((coat) => (
        <Line
          key={coat.id}
          record={coat}
          words={coatWords(coat)}
          about={coatedWords(coat)}
          fn={api.finish.strikeOutCoat}
          passed={coat.overrideReason}
        />
      ))}
    </ul>
  );
}

function Sandings({ sandings }: { sandings: readonly Sanding[] }) {
  return (
    <ul className={classes.list}>
      {sandings.map((sanding) => (
        <Line
          key={sanding.id}
          record={sanding}
          words={sandingWords(sanding)}
          about={[momentText(sanding.at), sanding.personName, sanding.note]
            .filter((part) => part !== '')
            .join(', ')}
          fn={api.finish.strikeOutSanding}
        />
      ))}
    </ul>
  );
}

/** Every grit on every part, newest first, the earlier ones folded. */
export function SandingLines({ sandings }: { sandings: readonly Sanding[] }) {
  if (sandings.length === 0) return <p className={classes.quiet}>No sanding yet.</p>;
  const newest = sandings.toSorted((a, b) => b.at.localeCompare(a.at));
  return (
    <>
      <Sandings sandings={newest.slice(0, shownFirst)} />
      {newest.length > shownFirst ? (
        <Fold title={`Earlier (${newest.length - shownFirst})`}>
          <Sandings sandings={newest.slice(shownFirst)} />
        </Fold>
      ) : null}
    </>
  );
}
