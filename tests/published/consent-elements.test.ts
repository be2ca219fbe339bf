import { expect, test } from 'vitest';
import { answerConsent } from '../../core/shop/consents/answer.ts';
import { sha256 } from '../../core/shop/consents/hash.ts';
import { editOrder } from '../../core/shop/orders/orders.ts';
import { consentFormData } from '../../core/shop/papers/consent-form-data.ts';
import { getShop } from '../../core/shop/setup/shop.ts';
import type { Consent } from '../../shared/contract/consents.ts';
import { intentWords } from '../../shared/signatures.ts';
import { orderFields } from '../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../support/test-shop.ts';
import { Flow } from '../support/whole-flow.ts';

/**
 * Each element of an electronic signature and its record that the United States' statutes name has
 * its record here. Facts about records, not legal advice: whether a consent binds is for a lawyer.
 */

interface Kept {
  shop: TestShop;
  flow: Flow;
  consent: Consent;
  paper: Awaited<ReturnType<typeof paperOf>>;
}

async function paperOf(flow: Flow, consentId: string) {
  const order = await flow.order();
  const choice = { format: 'letter', printedAt: '2026-03-02T12:00:00.000Z' } as const;
  return consentFormData(order, await getShop(flow.shop.owner), consentId, choice);
}

async function signed(): Promise<Kept> {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  const asked = await flow.ask('price-and-scope');
  await answerConsent(shop.as('office'), {
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: asked.textSha256,
    answer: 'granted',
    answeredAt: '2026-03-02T10:00:00.000Z',
    channel: 'in-person',
    answeredBy: 'Nora Hale',
    contact: '',
    words: '',
    costChangeCents: 0,
    signature: {
      manner: 'drawn',
      intent: intentWords,
      strokes: [
        [
          [0.5, 0.5],
          [2.5, 0.7],
        ],
      ],
    },
  });
  const [consent] = (await flow.order()).consents;
  if (consent === undefined) throw new Error('nothing was asked');
  return { shop, flow, consent, paper: await paperOf(flow, consent.id) };
}

/** Anything that happens to the order afterwards. */
async function later({ shop, flow }: Kept): Promise<Consent> {
  const { rowVersion } = (await flow.order()).card;
  const change = { commandId: newCommandId(), id: flow.orderId, rowVersion };
  await editOrder(shop.owner, { ...change, ...orderFields, targetWeightLbf: 41 });
  const [consent] = (await flow.order()).consents;
  if (consent === undefined) throw new Error('the consent is gone');
  return consent;
}

interface Element {
  source: string;
  element: string;
  check(kept: Kept): void | Promise<void>;
}

const elements: Element[] = [
  {
    source: '15 USC 7001(a)',
    element: 'a signature in electronic form stands beside one on paper: it opens the same gate',
    check: ({ consent }) => expect(consent.state).toBe('granted'),
  },
  {
    source: '15 USC 7006(5); UETA section 2(8)',
    element: 'a symbol or process: strokes as drawn, or the full name typed',
    check: ({ consent }) =>
      expect(consent.answers[0]?.signature).toMatchObject({
        strokes: [
          [
            [0.5, 0.5],
            [2.5, 0.7],
          ],
        ],
      }),
  },
  {
    source: '15 USC 7006(5); UETA section 2(8)',
    element: 'attached to or logically associated with the record: bound to the hash of the text',
    check: async ({ consent, shop }) => {
      const row = await shop.owner.read.selectFrom('consent_answer').selectAll().executeTakeFirst();
      expect(row).toMatchObject({ consent_id: consent.id, text_sha256: sha256(consent.text) });
    },
  },
  {
    source: '15 USC 7006(5); UETA section 2(8)',
    element: 'adopted with the intent to sign: the words shown are kept',
    check: ({ consent }) => expect(consent.answers[0]?.signature?.intent).toBe('I sign this'),
  },
  {
    source: 'UETA section 9(a)',
    element: 'attribution: who, when, how, and who of the shop wrote it down',
    check: ({ consent }) =>
      expect(consent.answers[0]).toMatchObject({
        answeredBy: 'Nora Hale',
        answeredAt: '2026-03-02T10:00:00.000Z',
        channel: 'in-person',
        recordedBy: 'Otto Reed',
        recordedAt: expect.any(String),
      }),
  },
  {
    source: '15 USC 7001(c)(1)(A)',
    element:
      'affirmative: without an answer nothing is granted; and not withdrawn: a withdrawal ends it',
    check: async ({ flow, consent }) => {
      await flow.answer(consent, 'withdrawn');
      const order = await flow.order();
      expect(order.consents[0]).toMatchObject({
        state: 'withdrawn',
        answers: [{ answer: 'granted' }, { answer: 'withdrawn' }],
      });
      await flow.ask('alteration-acknowledgement');
      expect((await flow.order()).consents[0]?.state).toBe('waiting');
    },
  },
  {
    source: '15 USC 7001(c)(1)(B)',
    element:
      'told of the paper option, of withdrawing and how, of its scope, and of changed addresses',
    check: ({ paper }) => {
      const told = paper.notes.join(' ');
      for (const words of [
        'on paper',
        'To take your agreement back',
        'costs nothing',
        'this text only',
        'without charge',
        'e-mail or phone changes',
      ]) {
        expect(told).toContain(words);
      }
    },
  },
  {
    source: '15 USC 7001(d)(1)(A) (ESIGN section 101(d))',
    element:
      'retention, accurately reflects: text and subject hold their hashes after later changes',
    check: async (kept) => {
      const after = await later(kept);
      expect(after).toMatchObject({
        text: kept.consent.text,
        textSha256: sha256(kept.consent.text),
        subjectSha256: sha256(kept.consent.subject),
        verified: { text: true, subject: true, answers: true },
        answers: kept.consent.answers,
      });
    },
  },
  {
    source: '15 USC 7001(d)(1)(B) (ESIGN section 101(d))',
    element: 'retention, stays accessible: no record of it can be changed or taken out',
    check: async ({ shop }) => {
      const db = shop.owner.write;
      for (const table of ['consent', 'consent_answer'] as const) {
        await expect(db.deleteFrom(table).execute()).rejects.toThrow('append-only');
      }
      await expect(db.updateTable('consent').set({ text: '' }).execute()).rejects.toThrow(
        'append-only',
      );
      await expect(
        db.updateTable('consent_answer').set({ answer: 'granted' }).execute(),
      ).rejects.toThrow('append-only');
    },
  },
  {
    source: '15 USC 7001(d)(1)(B) (ESIGN section 101(d))',
    element:
      'retention, reproducible: printed later word for word, with the answer and the signature',
    check: async (kept) => {
      await later(kept);
      const again = await paperOf(kept.flow, kept.consent.id);
      expect(again.text).toBe(kept.paper.text);
      expect(again.textMark).toBe(kept.paper.textMark);
      expect(again.answers).toEqual(kept.paper.answers);
    },
  },
];

test.each(elements)('$source: $element', async ({ check }) => {
  await check(await signed());
});
