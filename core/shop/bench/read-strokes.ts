import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow, SandingRow } from '../../storage/tables.ts';
import { lastGritTrouble } from '../finish/last-grits.ts';
import { closedJobs } from '../learned/jobs.ts';
import { strokeFigureFrom } from '../learned/stroke-figure.ts';
import { type StrokesSoFar, strokesSoFar } from './strokes-so-far.ts';
import type { Workdown } from './workdown-of.ts';

type Db = OpenShop['read'];

/** Sandings of the limbs of one order, the struck-out ones too, oldest first. */
export function limbSandingsOf(db: Db, orderId: string): Promise<SandingRow[]> {
  return db
    .selectFrom('sanding')
    .selectAll()
    .where('order_id', '=', orderId)
    .where('section', 'in', ['upper-limb', 'lower-limb'])
    .orderBy('at')
    .orderBy('id')
    .execute();
}

/** When the sanding began that is under way now: with the plan, or when the bow was last stripped. */
function sinceWhen({ plan, replay }: Workdown): string {
  const stripped = replay.removals.findLast(({ method }) => method === 'strip');
  return stripped?.done_at ?? plan.accepted_at;
}

/** What the strokes on record say of the sanding of an order; the closed jobs are read only where any were counted. */
export async function readStrokes(
  db: Db,
  order: Pick<OrderRow, 'bow_id'>,
  { work, limbSandings, now }: { work: Workdown; limbSandings: readonly SandingRow[]; now: string },
): Promise<StrokesSoFar | null> {
  const since = sinceWhen(work);
  const mine = limbSandings.filter(({ at, struck_reason }) => struck_reason === null && at > since);
  if (!mine.some(({ strokes }) => strokes !== null)) return null;
  const bow = await db
    .selectFrom('bow')
    .select('construction')
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  if (bow === undefined) return null;
  const { construction } = bow;
  const weighedAt = work.replay.readings.at(-1)?.at ?? null;
  const isDone = lastGritTrouble(mine) === null;
  const underWay = { sandings: mine, construction, since, weighedAt, isDone, now };
  return strokesSoFar(underWay, strokeFigureFrom(await closedJobs(db), construction));
}
