import type { ConsentKind } from '../../../shared/consents.ts';
import type { Consent } from '../../../shared/contract/consents.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ConsentAnswerRow, OrderRow } from '../../storage/tables.ts';
import { storedFindings } from '../findings/stored.ts';
import { storedLayout } from '../inscriptions/stored.ts';
import { storedPriceLines } from '../prices/stored.ts';
import { storedReadings } from '../readings/stored.ts';
import { getShop } from '../setup/shop.ts';
import { storedUndershoots } from '../undershoot/stored.ts';
import { answerEvidence, type Evidence } from './evidence.ts';
import { nextReminder } from './reminder-day.ts';
import { stateOf, verificationOf } from './state.ts';
import { storedConsents } from './stored.ts';
import { type SubjectRows, subjectsOf } from './subject.ts';

/** What the subjects of an order's consents are made of. */
export async function subjectRows(db: OpenShop['read'], order: OrderRow): Promise<SubjectRows> {
  return {
    order,
    findings: await storedFindings(db, order.id),
    readings: await storedReadings(db, [order.id]),
    undershoots: await storedUndershoots(db, order.id),
    priceLines: await storedPriceLines(db, [order.id]),
    layout: await storedLayout(db, order.id),
  };
}

/** What each kind of consent of an order refers to at this moment. */
export async function subjectsNow(
  db: OpenShop['read'],
  order: OrderRow,
): Promise<Record<ConsentKind, string>> {
  return subjectsOf(await subjectRows(db, order));
}

async function namesOf(db: OpenShop['read']) {
  const people = await db.selectFrom('person').select(['id', 'name']).execute();
  const wordings = await db.selectFrom('wording').select(['id', 'version']).execute();
  return {
    person: (id: string) => people.find((person) => person.id === id)?.name ?? '',
    version: (id: string | null) => wordings.find((wording) => wording.id === id)?.version ?? 0,
  };
}

type Names = Awaited<ReturnType<typeof namesOf>>;

function answerOf(
  answer: ConsentAnswerRow,
  names: Names,
  evidence: Evidence,
): Consent['answers'][number] {
  return {
    id: answer.id,
    answer: answer.answer,
    answeredAt: answer.answered_at,
    channel: answer.channel,
    answeredBy: answer.answered_by,
    contact: answer.contact,
    words: answer.words,
    costChangeCents: answer.cost_change_cents,
    recordedBy: names.person(answer.recorded_by),
    recordedAt: answer.recorded_at,
    ...evidence(answer),
  };
}

/** Consents of an order with their answers, newest first. */
export async function consentsOf(shop: OpenShop, order: OrderRow): Promise<Consent[]> {
  const stored = await storedConsents(shop.read, [order.id]);
  const subjects = await subjectsNow(shop.read, order);
  const names = await namesOf(shop.read);
  const evidence = await answerEvidence(shop.read, order.id);
  const { reminderDays } = await getShop(shop);
  return stored
    .toReversed()
    .slice(0, 200)
    .map((row) => {
      const state = stateOf(row, subjects[row.kind]);
      return {
        id: row.id,
        kind: row.kind,
        text: row.text,
        textSha256: row.text_sha256,
        subject: row.subject,
        subjectSha256: row.subject_sha256,
        verified: verificationOf(row),
        wordingVersion: names.version(row.wording_id),
        state,
        askedAt: row.asked_at,
        askedHow: row.asked_how,
        askedBy: names.person(row.asked_by),
        answers: row.answers.map((answer) => answerOf(answer, names, evidence)),
        reminders: row.reminders.map((reminder) => ({
          id: reminder.id,
          sentAt: reminder.sent_at,
          how: reminder.how,
          note: reminder.note,
          personName: names.person(reminder.person_id),
        })),
        remindOn:
          state === 'waiting'
            ? nextReminder(row.asked_at, row.reminders.at(-1)?.sent_at ?? null, reminderDays)
            : null,
      };
    });
}
