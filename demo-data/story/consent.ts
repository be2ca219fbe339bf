import { answerConsent } from '../../core/shop/consents/answer.ts';
import { askConsent, proposeConsent } from '../../core/shop/consents/ask.ts';
import { storedConsents } from '../../core/shop/consents/stored.ts';
import type { Answer, ConsentKind } from '../../shared/consents.ts';
import { intentWords } from '../../shared/signatures.ts';
import type { Job } from './job.ts';

const said: Record<Answer, string> = {
  granted: 'Yes, please go ahead as written.',
  declined: 'No, that is more than I want to spend on it. Please leave the bow as it is.',
  withdrawn: 'I have thought about it again and would rather not.',
};

/** Asks the owner of the bow for one consent, in the shop's own words. */
export async function ask(job: Job, kind: ConsentKind): Promise<void> {
  const { text } = await proposeConsent(job.chronicle.shop, { orderId: job.orderId, kind });
  const phones = (await job.order()).customer?.preferredContact === 'phone';
  await askConsent(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    kind,
    text,
    askedHow: phones ? 'read out on the telephone, copy by letter' : 'e-mail',
  });
}

/** The owner's answer to what was asked last of this kind. */
export async function answer(
  job: Job,
  kind: ConsentKind,
  given: { answer?: Answer; words?: string; costChangeCents?: number } = {},
): Promise<void> {
  const asked = await storedConsents(job.chronicle.shop.read, [job.orderId]);
  const consent = asked.filter((each) => each.kind === kind).at(-1);
  const { customer } = await job.order();
  if (consent === undefined || customer === null) throw new Error(`${kind} was never asked`);
  const channel =
    job.plan.handover === 'collected'
      ? 'in-person'
      : customer.preferredContact === 'phone'
        ? 'phone'
        : 'email';
  await answerConsent(job.as('office'), {
    ...job.command(),
    consentId: consent.id,
    textSha256: consent.text_sha256,
    answer: given.answer ?? 'granted',
    answeredAt: job.chronicle.now(),
    channel,
    answeredBy: customer.name,
    contact: channel === 'phone' ? customer.phone : channel === 'email' ? customer.email : '',
    words: given.words ?? said[given.answer ?? 'granted'],
    costChangeCents: given.costChangeCents ?? 0,
    signature:
      channel === 'in-person'
        ? { manner: 'typed', intent: intentWords, name: customer.name }
        : null,
  });
}
