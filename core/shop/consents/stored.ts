import type { OpenShop } from '../../storage/context.ts';
import type { ConsentAnswerRow, ConsentRow } from '../../storage/tables.ts';

export interface StoredConsent extends ConsentRow {
  answers: ConsentAnswerRow[];
}

/** Consents of the given orders with their answers, both in the order they were recorded. */
export async function storedConsents(
  db: OpenShop['read'],
  orderIds: readonly string[],
): Promise<StoredConsent[]> {
  if (orderIds.length === 0) return [];
  const rows = await db
    .selectFrom('consent')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .orderBy('asked_at')
    .orderBy('id')
    .execute();
  const answers = await db
    .selectFrom('consent_answer')
    .innerJoin('consent', 'consent.id', 'consent_answer.consent_id')
    .selectAll('consent_answer')
    .where('consent.order_id', 'in', orderIds)
    .orderBy('consent_answer.recorded_at')
    .orderBy('consent_answer.id')
    .execute();
  return rows.map((row) => ({
    ...row,
    answers: answers.filter((answer) => answer.consent_id === row.id),
  }));
}
