import type { ConsentKind } from '../../../shared/consents.ts';
import type { Consent } from '../../../shared/contract/consents.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { storedFindings } from '../findings/stored.ts';
import { storedReadings } from '../readings/stored.ts';
import { storedUndershoots } from '../undershoot/stored.ts';
import { stateOf } from './state.ts';
import { storedConsents } from './stored.ts';
import { subjectsOf } from './subject.ts';

/** What each kind of consent of an order refers to at this moment. */
export async function subjectsNow(
  db: OpenShop['read'],
  order: OrderRow,
): Promise<Record<ConsentKind, string>> {
  return subjectsOf({
    order,
    findings: await storedFindings(db, order.id),
    readings: await storedReadings(db, [order.id]),
    undershoots: await storedUndershoots(db, order.id),
  });
}

/** Consents of an order with their answers, newest first. */
export async function consentsOf(shop: OpenShop, order: OrderRow): Promise<Consent[]> {
  const stored = await storedConsents(shop.read, [order.id]);
  const subjects = await subjectsNow(shop.read, order);
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? '';
  return stored
    .toReversed()
    .slice(0, 200)
    .map((row) => ({
      id: row.id,
      kind: row.kind,
      text: row.text,
      textSha256: row.text_sha256,
      subject: row.subject,
      state: stateOf(row, subjects[row.kind]),
      askedAt: row.asked_at,
      askedHow: row.asked_how,
      askedBy: nameOf(row.asked_by),
      answers: row.answers.map((answer) => ({
        id: answer.id,
        answer: answer.answer,
        answeredAt: answer.answered_at,
        channel: answer.channel,
        answeredBy: answer.answered_by,
        contact: answer.contact,
        words: answer.words,
        costChangeCents: answer.cost_change_cents,
        recordedBy: nameOf(answer.recorded_by),
        recordedAt: answer.recorded_at,
      })),
    }));
}
