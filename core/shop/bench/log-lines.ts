import type { BenchLogLine } from '../../../shared/contract/bench-work.ts';
import { decimal } from '../../../shared/measure.ts';
import type { OpenShop } from '../../storage/context.ts';
import { sessionWeights } from '../readings/weights.ts';
import { glassWords } from './glass-checks.ts';
import type { Bench } from './read-bench.ts';
import { storedRemovalWords } from './removal-words.ts';
import { tillerWords } from './tiller-readings.ts';

/** Lines of one order's log; more than any job makes. */
const most = 500;

type Line = Omit<BenchLogLine, 'personName'> & { personId: string };
interface Kept {
  id: string;
  row_version: number;
  person_id: string;
  struck_reason: string | null;
}

const line = (kind: BenchLogLine['kind'], row: Kept, at: string, what: string): Line => ({
  kind,
  id: row.id,
  rowVersion: row.row_version,
  what: what.replaceAll(/\p{Cc}+/gu, ' ').slice(0, 500),
  at,
  personId: row.person_id,
  struckReason: row.struck_reason,
  canStrike: row.struck_reason === null && kind !== 'surprise',
});

function linesOf({ rows, glassChecks }: Bench): Line[] {
  const { readings, removals, cuts, faces, tillers, surprises } = rows;
  return [
    ...readings.map((row) => {
      const weights = sessionWeights(row.pulls, row.draw_reference).map(({ text }) => text);
      return line(
        'reading',
        row,
        row.weighed_at,
        `Weighed ${weights.join(', ') || 'nothing that counts'}`,
      );
    }),
    ...removals.flatMap((row) =>
      row.done_at === null
        ? []
        : [line('removal', row, row.done_at, storedRemovalWords(row, cuts, faces))],
    ),
    ...glassChecks.map((row) =>
      line('glass-check', row, row.checked_at, `Glass check: ${glassWords(row)}`),
    ),
    ...tillers.map((row) => line('tiller', row, row.read_at, `Tiller ${tillerWords(row)}`)),
    ...surprises.map((row) =>
      line(
        'surprise',
        row,
        row.answered_at,
        `Questions answered; ${decimal(row.forecast_lbf)} lb was expected`,
      ),
    ),
  ];
}

/** What was read, taken off and looked at, newest first; struck-out lines keep their reason. */
export async function logLinesOf(shop: OpenShop, bench: Bench): Promise<BenchLogLine[]> {
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return linesOf(bench)
    .sort((a, b) => (a.at === b.at ? (a.id < b.id ? 1 : -1) : a.at < b.at ? 1 : -1))
    .slice(0, most)
    .map(({ personId, ...rest }) => ({ ...rest, personName: names.get(personId) ?? '' }));
}
