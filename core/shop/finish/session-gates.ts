import type { Kysely } from 'kysely';
import type { OrderMissing } from '../../../shared/contract/finish.ts';
import type { CoatPurpose } from '../../../shared/finish.ts';
import type { Gate, MissingItem } from '../../../shared/gates.ts';
import type { Tables } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import type { CoatState } from '../gates/coat-state.ts';
import { readManyFacts } from '../gates/facts.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import { missingAt } from '../gates/gates.ts';
import { type RecordState, stateOf } from '../gates/record-state.ts';
import { airTroublesAt } from './air-now.ts';
import { lotsTrouble, potLifeTrouble } from './batch-troubles.ts';
import { readClockTrouble } from './clock-trouble.ts';
import { finishPolicy } from './policy.ts';
import type { Session, SessionBow } from './read-session.ts';
import { airSince, type FinishRows } from './stored.ts';
import { lastCoat, windowOf } from './window-of.ts';

type Db = Kysely<Tables>;

const none = { state: 'none' } as const;
const ok = { state: 'ok' } as const;

/** Only what was on the bow by then counts: a coat may be written down later. */
function rowsAt(rows: FinishRows, at: string): FinishRows {
  return {
    ...rows,
    coats: rows.coats.filter((row) => row.at <= at),
    surfaces: rows.surfaces.filter((row) => row.at <= at),
  };
}

function potLifeState({ sheet, batch, at }: Session): RecordState {
  if (sheet.kind !== 'two-part') return ok;
  if (batch === null) return stateOf('No batch chosen: a two-part finish is mixed first.', at);
  return stateOf(potLifeTrouble(batch, at), at);
}

function lotsState({ lots, at }: Session): RecordState {
  return lots.length === 0 ? ok : stateOf(lotsTrouble(lots, at), at);
}

function systemState({ input, system }: Session, rows: FinishRows): RecordState {
  if (rows.chosen === null) return none;
  if (input.purpose === 'seal' || rows.chosen.finish_system_id === system.id) return ok;
  return stateOf(`Another finish was chosen for this bow, not ${system.name}.`, '');
}

function airState(session: Session, rows: FinishRows, bow: SessionBow): RecordState {
  if (session.air === null) return none;
  const troubles = airTroublesAt(session.air, session.sheet, rows, bow, session.at);
  return stateOf(troubles.length === 0 ? null : troubles.join(' '), session.at);
}

/** A clear coat over lettering that has none yet is the first, whatever it was called. */
export function gateOf(purpose: CoatPurpose, facts: GateFacts): Gate {
  if (purpose === 'first-clear') return 'first-clear';
  const lettered = facts.services.includes('re-mark');
  const first = facts.finish.coats.every((each) => each === 'seal');
  return lettered && first && purpose !== 'seal' ? 'first-clear' : 'coat';
}

/** Open before the first coat, inside the sheet's window, or where the sheet asks for a scuff that was done. */
async function coatWindowState(
  db: Db,
  { at }: Session,
  bow: SessionBow,
  rows: FinishRows,
): Promise<RecordState> {
  const coat = lastCoat(rows);
  if (coat === null) return ok;
  const window = windowOf(rows, await airSince(db, coat.at), at);
  if (window === null || window.state === 'open') return ok;
  if (window.state === 'scuff' && bow.scuffed !== null) return ok;
  return stateOf(window.sentence, coat.at);
}

async function coatState(
  db: Db,
  session: Session,
  bow: SessionBow,
  stored: FinishRows,
): Promise<CoatState> {
  const rows = rowsAt(stored, session.at);
  return {
    potLife: potLifeState(session),
    lots: lotsState(session),
    window: await coatWindowState(db, session, bow, rows),
    air: airState(session, rows, bow),
    system: systemState(session, rows),
  };
}

/** Bows that hang on the rack on a day, by order. */
export async function rackedOn(db: Db, day: string): Promise<Set<string>> {
  const rows = await db
    .selectFrom('coat')
    .select(['order_id', 'at'])
    .where('struck_reason', 'is', null)
    // A shop's day is never further than a day from the same day in UTC.
    .where('at', '>=', `${previous(day)}T00:00:00.000Z`)
    .execute();
  return new Set(rows.filter((row) => dayOf(row.at) === day).map((row) => row.order_id));
}

function previous(day: string): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - 24 * 60 * 60_000).toISOString().slice(0, 10);
}

export interface RackSlots {
  used: number;
  /** Bows of the session that do not hang there yet. */
  wanted: number;
  all: number;
}

export async function rackSlots(db: Db, session: Session): Promise<RackSlots> {
  const racked = await rackedOn(db, dayOf(session.at));
  const fresh = session.bows.filter(({ order }) => !racked.has(order.id));
  const { rackSlots: all } = await finishPolicy(db);
  return { used: racked.size, wanted: fresh.length, all };
}

function rackMissing({ used, wanted, all }: RackSlots, gate: Gate): MissingItem[] {
  if (wanted === 0 || used + wanted <= all) return [];
  const sentence =
    `The rack takes ${all === 1 ? 'one bow' : `${all} bows`} a day, ${used} today so far: ` +
    `${wanted === 1 ? 'one bow more does' : `${wanted} bows more do`} not fit.`;
  return [
    { item: 'rack-slots', gate, sentence, section: 'finish', opens: null, override: 'owner' },
  ];
}

/**
 * By a clock that was set back a cup would be good again, a lot in date and old air new, and the
 * coat would carry a false hour: nothing else is judged, and nobody lets it pass.
 */
function clockMissing(trouble: string | null, gate: Gate): MissingItem[] {
  if (trouble === null) return [];
  return [
    { item: 'clock', gate, sentence: trouble, section: 'finish', opens: null, override: 'never' },
  ];
}

/** Of the cup and the can: the same for every bow of the session. */
const shared: readonly string[] = ['pot-life', 'lots-in-date'];

/** Each sentence once: one batch for all bows. */
function once(items: readonly MissingItem[]): MissingItem[] {
  return [...new Map(items.map((each) => [each.sentence, each])).values()];
}

export interface SessionVerdict {
  session: MissingItem[];
  orders: OrderMissing[];
  slots: RackSlots;
  /** Finish rows of each bow as they were judged, by order. */
  rows: ReadonlyMap<string, FinishRows>;
}

/**
 * What the gates hold against a session: once for all of it, and bow by bow.
 * @param now ISO-8601 UTC; the coats may lie earlier, the computer's clock is judged by now.
 */
export async function sessionVerdict(
  db: Db,
  session: Session,
  now: string,
): Promise<SessionVerdict> {
  const orders = session.bows.map(({ order }) => order);
  const known = await readManyFacts(db, orders, now);
  const rows = new Map([...known].map(([id, facts]) => [id, facts.rows.finish]));
  const slots = await rackSlots(db, session);
  const ofAll: Gate = session.input.purpose === 'first-clear' ? 'first-clear' : 'coat';
  const clock = clockMissing(await readClockTrouble(db, now), ofAll);
  if (clock.length > 0) return { session: clock, orders: [], slots, rows };
  const missing: OrderMissing[] = [];
  for (const { order, bow } of session.bows) {
    const its = known.get(order.id);
    if (its === undefined) continue;
    const coat = await coatState(db, session, bow, its.rows.finish);
    const facts = { ...its.facts, coat };
    const gate = gateOf(session.input.purpose, facts);
    missing.push({ orderId: order.id, number: order.number, missing: missingAt(gate, facts) });
  }
  const all = missing.flatMap((each) => each.missing);
  return {
    session: [
      ...once(all.filter((each) => shared.includes(each.item))),
      ...rackMissing(slots, ofAll),
    ],
    orders: missing
      .map((each) => ({
        ...each,
        missing: each.missing.filter((item) => !shared.includes(item.item)),
      }))
      .filter((each) => each.missing.length > 0),
    slots,
    rows,
  };
}
