import type { Message } from '../../../shared/contract/messages.ts';
import type { MessageStep } from '../../../shared/wordings.ts';
import type { OpenShop } from '../../storage/context.ts';

/** What was sent of an order, newest first, the struck-out ones too. */
export async function messagesOf(shop: OpenShop, orderId: string): Promise<Message[]> {
  const rows = await shop.read
    .selectFrom('message')
    .innerJoin('person', 'person.id', 'message.person_id')
    .selectAll('message')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('sent_at', 'desc')
    .orderBy('message.id', 'desc')
    .limit(1000)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    step: row.use as MessageStep,
    channel: row.channel,
    toWhom: row.to_whom,
    subject: row.subject,
    body: row.body,
    papers: JSON.parse(row.papers_json) as Message['papers'],
    handed: row.handed,
    sentAt: row.sent_at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  }));
}
