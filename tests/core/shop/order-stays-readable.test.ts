import { expect, test } from 'vitest';
import { answerConsent } from '../../../core/shop/consents/answer.ts';
import { findAnything } from '../../../core/shop/find/find.ts';
import { addFinding, resolveFinding } from '../../../core/shop/findings/findings.ts';
import { listDrafts, saveDraft } from '../../../core/shop/intake/drafts.ts';
import { submitIntake } from '../../../core/shop/intake/submit.ts';
import { boardCards } from '../../../core/shop/orders/board.ts';
import { setInscription } from '../../../core/shop/orders/orders.ts';
import { draft } from '../../../shared/contract/intake.ts';
import { orderCard } from '../../../shared/contract/order-card.ts';
import { orderDetail } from '../../../shared/contract/orders.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

/** What was taken in must come out again: an answer outside the contract makes the order unreadable. */
async function started() {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  return { shop, flow, readable: async () => orderDetail.safeParse(await flow.order()).success };
}

test('tabs and line ends in a note, an answer, a repair and an inscription', async () => {
  const { shop, flow, readable } = await started();
  await flow.note('target-feasible', 'box\tcrushed\nbow\tfine');
  expect(await readable()).toBe(true);
  const { id } = await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    grade: 'watch',
    place: 'lower tip',
    note: 'hairline\n\tin the overlay',
  });
  await resolveFinding(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: 1,
    how: 'glued\n\tlooked at again',
  });
  expect(await readable()).toBe(true);
  const asked = await flow.ask('alteration-acknowledgement');
  await answerConsent(shop.owner, {
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: asked.textSha256,
    answer: 'granted',
    answeredAt: '2026-03-02T10:00:00.000Z',
    channel: 'email',
    answeredBy: 'Nora Hale',
    contact: 'nora@hale.example',
    words: 'Yes.\n\tGo ahead.',
    costChangeCents: 0,
  });
  expect(await readable()).toBe(true);
  await setInscription(shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion: (await flow.order()).card.rowVersion,
    inscription: 'AMO\t66"\n45#\n@ 28"',
  });
  expect(await readable()).toBe(true);
});

test('what lettering still needs is one line of the contract, however it was typed', async () => {
  const { shop, flow } = await started();
  for (const inscription of ['45#\n@\t28"', `${'4'.repeat(150)}#\n@ ${'2'.repeat(150)}`]) {
    await setInscription(shop.owner, {
      commandId: newCommandId(),
      id: flow.orderId,
      rowVersion: (await flow.order()).card.rowVersion,
      inscription,
    });
    const result = await flow.note('lettering-applied');
    if (result.outcome !== 'refused') throw new Error('lettered');
    for (const { sentence } of result.missing) expect(sentence).toMatch(/^[^\p{Cc}]{1,400}$/u);
  }
});

test('a bow whose names are as long as the form allows keeps the board readable', async () => {
  const shop = await testShop();
  await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'new', fields: customerFields },
    bow: {
      is: 'new',
      fields: {
        ...bowFields,
        takeDown: 'sleeve',
        maker: 'm'.repeat(120),
        model: 'n'.repeat(120),
        amoLengthIn: 65.25,
        markedWeightLbf: 123.5,
        markedDrawIn: 27.25,
        markedDrawReference: 'unknown',
      },
    },
    order: orderFields,
    startsAt: 'requested',
    cameBy: 'phone',
  });
  const [card] = await boardCards(shop.owner, false);
  expect(orderCard.safeParse(card).success).toBe(true);
});

test('a draft with a pasted tab in the name keeps the drafts readable', async () => {
  const shop = await testShop();
  await saveDraft(shop.owner, { id: 'draft-1', body: { customerName: 'Nora\tHale\n' } });
  const drafts = await listDrafts(shop.owner);
  expect(drafts.map((each) => draft.safeParse(each).success)).toEqual([true]);
});

test('more entries than an answer may carry leave the newest, and the order readable', async () => {
  const { flow, readable } = await started();
  const { write } = flow.shop.core.shop();
  const person = flow.shop.owner.actor.personId;
  const row = (n: number) => ({
    id: `entry-${String(n).padStart(5, '0')}`,
    order_id: flow.orderId,
    item: 'coat' as const,
    outcome: 'ok' as const,
    done_on: '2026-03-02',
    person_id: person,
    note: '',
    override_reason: null,
    recorded_at: '2026-03-02T09:00:00.000Z',
    struck_reason: null,
    row_version: 1,
  });
  for (let from = 0; from < 2100; from += 100) {
    const rows = Array.from({ length: 100 }, (_, n) => row(from + n));
    await write.insertInto('entry').values(rows).execute();
  }
  expect(await readable()).toBe(true);
  expect((await flow.order()).entries[0]?.id).toBe('entry-02099');
});

test.each(['.', '@', '...', '"', '*', '-', "'", '\\', '^(', 'NEAR(', '\u0301', '💥'])(
  'searching for %s is no error',
  async (text) => {
    const { shop } = await started();
    expect(await findAnything(shop.owner, text)).toEqual([]);
  },
);

test('a name typed with combining accents is found', async () => {
  const shop = await testShop();
  await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'new', fields: { ...customerFields, name: 'Angélique Moré' } },
    bow: { is: 'later' },
    order: orderFields,
    startsAt: 'requested',
    cameBy: 'phone',
  });
  const found = await findAnything(shop.owner, 'Angélique'.normalize('NFD'));
  expect(found.map((each) => each.title)).toContain('Angélique Moré');
});
