import type {
  AgreedChange,
  OrderPrice,
  Payment,
  PriceLine,
} from '../../../shared/contract/prices.ts';
import { balanceOf, depositAsked, paymentSums } from '../../../shared/money.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow, PriceLineRow, UndershootRow } from '../../storage/tables.ts';
import { storedUndershoots } from '../undershoot/stored.ts';
import { storedPriceLines, totalsOf } from './stored.ts';

type Db = OpenShop['read'];

function lineOf(row: PriceLineRow, cents: number): PriceLine {
  return {
    id: row.id,
    rowVersion: row.row_version,
    kind: row.kind,
    what: row.what,
    quantity: row.quantity,
    unitCents: row.unit_cents,
    discountBp: row.discount_bp,
    taxable: row.taxable === 1,
    minutes: row.minutes,
    priceServiceId: row.price_service_id,
    cents,
  };
}

async function paymentsOf(db: Db, orderId: string): Promise<Payment[]> {
  const rows = await db
    .selectFrom('payment')
    .innerJoin('person', 'person.id', 'payment.person_id')
    .selectAll('payment')
    .select('person.name as recorder')
    .where('order_id', '=', orderId)
    .orderBy('recorded_at', 'desc')
    .orderBy('payment.id', 'desc')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    kind: row.kind,
    method: row.method,
    cents: row.cents,
    receivedOn: row.received_on,
    reference: row.reference,
    note: row.note,
    recordedAt: row.recorded_at,
    recordedBy: row.recorder,
    struckReason: row.struck_reason,
  }));
}

/**
 * What an answer changes the price by. A yes to a bow under its target takes up the cut the shop
 * offered when it asked, unless the two agreed on another one in the answer.
 */
function agreedCents(
  answer: { kind: string; asked_at: string; cost_change_cents: number },
  offers: readonly UndershootRow[],
): number {
  if (answer.kind !== 'undershoot' || answer.cost_change_cents !== 0) {
    return answer.cost_change_cents;
  }
  const asked = offers.filter(
    (offer) => offer.struck_reason === null && offer.proposed_at <= answer.asked_at,
  );
  return asked.at(-1)?.price_change_cents ?? 0;
}

/**
 * Changes of cost the customer granted, while no standing line takes them up. An answer counts
 * only while it is the last one to its question: what was withdrawn later is not agreed.
 */
export async function agreedChangesOf(db: Db, orderId: string): Promise<AgreedChange[]> {
  const rows = await db
    .selectFrom('consent_answer')
    .innerJoin('consent', 'consent.id', 'consent_answer.consent_id')
    .select([
      'consent_answer.id',
      'consent_id',
      'consent.kind',
      'consent.asked_at',
      'answer',
      'cost_change_cents',
      'answered_at',
      'answered_by',
      'channel',
    ])
    .where('consent.order_id', '=', orderId)
    .orderBy('recorded_at')
    .orderBy('consent_answer.id')
    .execute();
  const taken = new Set(
    (await storedPriceLines(db, [orderId])).map((line) => line.consent_answer_id),
  );
  const last = new Map(rows.map((row) => [row.consent_id, row]));
  const offers = await storedUndershoots(db, orderId);
  return [...last.values()]
    .filter((row) => row.answer === 'granted' && !taken.has(row.id))
    .map((row) => ({ row, cents: agreedCents(row, offers) }))
    .filter(({ cents }) => cents !== 0)
    .map(({ row, cents }) => ({
      answerId: row.id,
      cents,
      agreedAt: row.answered_at,
      answeredBy: row.answered_by,
      channel: row.channel,
    }));
}

/** What an order costs and what was paid: the figures of the screen and of every paper. */
export async function priceOf(shop: OpenShop, order: OrderRow): Promise<OrderPrice> {
  const rows = await storedPriceLines(shop.read, [order.id]);
  const payments = await paymentsOf(shop.read, order.id);
  const policy = await shop.read.selectFrom('shop').select('deposit_percent').executeTakeFirst();
  const depositPercent = policy?.deposit_percent ?? 0;
  const totals = totalsOf(order, rows);
  const totalCents = rows.length > 0 ? totals.totalCents : order.estimate_cents;
  const sums = paymentSums(payments.filter(({ struckReason }) => struckReason === null));
  return {
    lines: rows.map((row, i) => lineOf(row, totals.lineCents[i] ?? 0)),
    taxName: order.tax_name,
    taxRatePpm: order.tax_rate_ppm,
    subtotalCents: rows.length > 0 ? totals.subtotalCents : (order.estimate_cents ?? 0),
    taxableCents: totals.taxableCents,
    taxCents: totals.taxCents,
    totalCents,
    depositPercent,
    depositCents: depositAsked(totalCents ?? 0, depositPercent),
    ...sums,
    balanceCents: totalCents === null ? null : balanceOf(totalCents, sums),
    payments,
    agreedChanges: await agreedChangesOf(shop.read, order.id),
  };
}
