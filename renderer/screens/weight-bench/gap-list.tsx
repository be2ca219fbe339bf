import { Link } from 'wouter';
import type { PlanStart } from '../../../shared/plan-record.ts';
import { Fold } from '../../parts/fold.tsx';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import { gapPlace } from './gap-place.ts';
import classes from './weight-bench.module.css';

const shownFirst = 4;

function Gaps({ gaps, about }: Pick<PlanStart, 'gaps' | 'about'>) {
  return (
    <ul className={classes.gaps}>
      {gaps.map(({ field, sentence, fix }) => {
        const place = gapPlace(fix, about);
        return (
          <li key={`${field} ${sentence}`}>
            <Mark kind="attention">{sentence}</Mark>
            {place === null ? null : (
              <Link href={place.href} className={classes.fix ?? ''}>
                {place.label}
              </Link>
            )}
          </li>
        );
      })}
    </ul>
  );
}

/** What the records do not hold, what was taken instead, and where it is put right. */
export function GapList({ start: { gaps, about } }: { start: PlanStart }) {
  if (gaps.length === 0) return null;
  const rest = gaps.slice(shownFirst);
  return (
    <Panel title="Not known, so taken as usual">
      <Gaps gaps={gaps.slice(0, shownFirst)} about={about} />
      {rest.length === 0 ? null : (
        <Fold title={`${rest.length} more`}>
          <Gaps gaps={rest} about={about} />
        </Fold>
      )}
    </Panel>
  );
}
