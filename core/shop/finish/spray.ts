import type { SessionLook } from '../../../shared/contract/finish.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import { coatPurposeLabels } from '../../../shared/finish.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { note } from '../orders/history.ts';
import { changedOf } from '../record.ts';
import { issueFirstExpired, issueFromLot } from '../stores/issue-stock.ts';
import { bowIdOf } from './choose.ts';
import { doneAt } from './done-at.ts';
import { coatFilm } from './film-of.ts';
import { readSession, type Session } from './read-session.ts';
import { type SessionVerdict, sessionVerdict } from './session-gates.ts';
import { noFinishRows } from './stored.ts';

type Input = ContractInputs['finish']['spray'];
type Result = ContractOutputs['finish']['spray'];

/** @see contract.finish.lookAtSession */
export async function lookAtSession(
  shop: OpenShop,
  input: ContractInputs['finish']['lookAtSession'],
): Promise<SessionLook> {
  const now = shop.now();
  const session = await readSession(shop.read, input, doneAt(input.at, now));
  const { session: ofAll, orders, slots, rows } = await sessionVerdict(shop.read, session, now);
  const first = rows.get(session.bows[0]?.order.id ?? '') ?? noFinishRows;
  return {
    session: ofAll,
    orders,
    ...coatFilm(session.sheet, session.system.id, input.wetMil, first),
    slots,
  };
}

const allOf = ({ session, orders }: SessionVerdict): MissingItem[] => [
  ...session,
  ...orders.flatMap((each) => each.missing),
];

/**
 * What the owner lets pass; null where the session is refused.
 * @throws ShopError NOT_ALLOWED where somebody other than the owner overrides.
 */
function letPass(
  verdict: SessionVerdict,
  ctx: ShopContext,
  override: Input['override'],
): MissingItem[] | null {
  const missing = allOf(verdict);
  if (missing.length === 0) return [];
  if (override === undefined) return null;
  if (ctx.actor.role !== 'owner') {
    throw new ShopError('NOT_ALLOWED', 'Only the owner lets a coat pass with something missing.');
  }
  return missing.some((item) => item.override === 'never') ? null : missing;
}

/** From the can: what was used leaves the stores, and the lot is noted on the session. */
async function issueUsed(
  trx: CommandTransaction,
  ctx: ShopContext,
  session: Session,
  used: number | null,
): Promise<string | null> {
  const { lotId } = session.input;
  if (used === null) return lotId;
  const { resin_id: consumableId, name } = session.system;
  if (consumableId === null) refuseField('used', `${name} is not kept in the stores.`);
  if (session.batch !== null) refuseField('used', 'A batch was issued when it was mixed.');
  const issue = {
    consumableId,
    quantity: used,
    today: dayOf(trx.at),
    orderId: session.bows.length === 1 ? (session.bows[0]?.order.id ?? null) : null,
    batchId: null,
    reason:
      `${coatPurposeLabels[session.input.purpose]} of ${session.bows.map(({ order }) => order.number).join(', ')}`.slice(
        0,
        400,
      ),
  };
  const { picks } =
    lotId === null
      ? await issueFirstExpired(trx, ctx, issue)
      : await issueFromLot(trx, ctx, lotId, issue);
  return lotId ?? picks[0]?.lotId ?? null;
}

function summaryOf({ input, system, batch }: Session, wetMil: number | null): string {
  const count = input.coats === 1 ? '' : `, ${input.coats} coats`;
  const film = wetMil === null ? '' : `, ${wetMil} mil wet`;
  const of = batch === null ? '' : `, batch ${batch.name}`;
  return `${coatPurposeLabels[input.purpose]}: ${system.name}${of}${count}${film}`;
}

/** What a session was let pass with, and the rows it was judged by. */
interface Passed extends Pick<SessionVerdict, 'rows'> {
  passed: readonly MissingItem[];
  reason: string | null;
}

async function writeCoats(
  trx: CommandTransaction,
  ctx: ShopContext,
  session: Session,
  sessionId: string,
  { rows, passed, reason }: Passed,
): Promise<string[]> {
  const { input, sheet, system, at } = session;
  const ids: string[] = [];
  for (const { order, bow } of session.bows) {
    const film = coatFilm(sheet, system.id, input.wetMil, rows.get(order.id) ?? noFinishRows);
    const row = await trx.insert('coat', {
      id: ctx.newId(),
      session_id: sessionId,
      order_id: order.id,
      bow_id: bowIdOf(order),
      purpose: input.purpose,
      sections_json: JSON.stringify(input.sections),
      coats: input.coats,
      wet_mil: film.wetMil,
      dry_mil: film.dryMil,
      scuffed_json: bow.scuffed === null ? null : JSON.stringify(bow.scuffed),
      hung_since: bow.hungSince === null ? null : new Date(bow.hungSince).toISOString(),
      at,
      struck_reason: null,
    });
    const warned =
      passed.length === 0 ? '' : `. Let pass: ${passed.map((item) => item.sentence).join(' ')}`;
    await note(trx, ctx, order.id, {
      kind: 'coat',
      summary: `${summaryOf(session, film.wetMil)}${warned}`,
      reason,
    });
    if (bow.surfaceF !== null) {
      await trx.insert('surface_reading', {
        id: ctx.newId(),
        order_id: order.id,
        at,
        surface_f: bow.surfaceF,
        person_id: ctx.actor.personId,
      });
    }
    ids.push(row.id);
  }
  return ids;
}

/** One gun-fill, several bows, one entry. @see contract.finish.spray */
export function spray(ctx: ShopContext, input: Input): Promise<Result> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.spray' }, async (trx) => {
    const session = await readSession(trx.db, input, doneAt(input.at, trx.at));
    const [only] = session.bows;
    if (session.bows.length === 1 && only !== undefined) {
      trx.about({ orderId: only.order.id, bowId: only.order.bow_id });
    }
    const verdict = await sessionVerdict(trx.db, session, trx.at);
    const passed = letPass(verdict, ctx, input.override);
    if (passed === null) {
      return { outcome: 'refused', session: verdict.session, orders: verdict.orders };
    }
    const reason = passed.length === 0 ? null : (input.override?.reason ?? null);
    const row = await trx.insert('spray_session', {
      id: ctx.newId(),
      finish_system_id: session.system.id,
      batch_id: session.batch?.id ?? null,
      lot_id: await issueUsed(trx, ctx, session, input.used),
      air_reading_id: session.air?.id ?? null,
      at: session.at,
      note: input.note,
      override_reason: reason,
      person_id: ctx.actor.personId,
    });
    const coatIds = await writeCoats(trx, ctx, session, row.id, {
      rows: verdict.rows,
      passed,
      reason,
    });
    const warnings = [...new Set(passed.map((item) => item.sentence))].slice(0, 60);
    return { outcome: 'recorded', ...changedOf(row), coatIds, warnings };
  });
}
