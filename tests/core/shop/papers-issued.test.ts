import { expect, test } from 'vitest';
import { setLayout } from '../../../core/shop/inscriptions/layout.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { setInscription } from '../../../core/shop/orders/orders.ts';
import { comparePaper } from '../../../core/shop/papers/compare.ts';
import { listPapers } from '../../../core/shop/papers/issued.ts';
import { issuePaper, previewPaper } from '../../../core/shop/papers/papers.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { decode, pagesOf, textOf } from '../papers/read-back.ts';

const proof = { kind: 'inscription-proof', format: 'letter', copy: 'customer' } as const;
const label = { kind: 'bow-label', format: 'label', copy: 'bench' } as const;
const consent = { kind: 'consent-form', format: 'a4', copy: 'customer' } as const;
const all = { kind: null, orderNumber: '', page: 0 };

async function lettered(shop: TestShop) {
  const flow = new Flow(shop, (await takeIn(shop)).id);
  await flow.weigh(await checkedScale(shop), 'after-sanding', 45.2);
  await write(flow, 'AMO 66"\n45# @ 28"');
  return flow;
}

async function write(flow: Flow, inscription: string) {
  const { rowVersion } = (await flow.order()).card;
  const commandId = newCommandId();
  await setInscription(flow.shop.owner, { commandId, id: flow.orderId, rowVersion, inscription });
}

type Choice = typeof proof | typeof label | typeof consent;

async function print(flow: Flow, choice: Choice, aboutId: string | null = null) {
  const file = await issuePaper(flow.shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    aboutId,
    ...choice,
    action: 'printed',
  });
  return new Uint8Array(await file.arrayBuffer());
}

const paperLines = async (flow: Flow) =>
  (await getOrder(flow.shop.owner, flow.orderId)).history
    .filter(({ kind }) => kind === 'paper')
    .toSorted((a, b) => a.at.localeCompare(b.at))
    .map(({ summary }) => summary);

async function compareNewest(flow: Flow, kind: Choice['kind']) {
  const { papers } = await listPapers(flow.shop.owner, { ...all, kind });
  return comparePaper(flow.shop.owner, { id: papers[0]?.id ?? '' });
}

test('the proof goes out, and out again on another day as the same; a changed line makes it differ', async () => {
  const shop = await testShop();
  const flow = await lettered(shop);
  const bytes = await print(flow, proof);
  const text = await textOf(bytes);
  for (const words of ['AMO 66"', '45# @ 28"', 'Nora Hale', 'Not asked yet.']) {
    expect(text).toContain(words);
  }
  expect(await compareNewest(flow, 'inscription-proof')).toEqual({ outcome: 'same' });
  shop.clock.advance(3 * 86_400_000);
  await print(flow, proof);
  expect((await paperLines(flow)).at(-1)).toMatch(/again: as the one of 2026-/);
  await setLayout(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    rowVersion: null,
    position: 'lower limb, belly',
    makerMark: '',
    surface: 'sealed',
    manner: 'hand',
    ink: '',
    letterHeightIn: 0.25,
    oldMarking: '',
    note: '',
  });
  expect(await compareNewest(flow, 'inscription-proof')).toMatchObject({ outcome: 'differs' });
  await print(flow, proof);
  expect((await paperLines(flow)).at(-1)).toContain(
    'again: it says something else than the one of',
  );
});

test('the label comes out only for approved lines, and cannot be made again once they changed', async () => {
  const shop = await testShop();
  const flow = await lettered(shop);
  const made = () => previewPaper(shop.owner, { orderId: flow.orderId, aboutId: null, ...label });
  await expect(made()).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: expect.stringContaining('Print the inscription proof until then.'),
  });
  await flow.grant('marking-approval');
  const bytes = await print(flow, label);
  expect(await textOf(bytes)).toContain('45# @ 28"');
  const [page] = await pagesOf(bytes);
  const { width, height } = page?.getViewport({ scale: 1 }) ?? { width: 0, height: 0 };
  expect([width, height]).toEqual([162, 90]);
  await print(flow, label);
  expect((await paperLines(flow)).at(-1)).toContain('bench copy, printed, again: as the one of');
  await write(flow, 'AMO 66"\n46# @ 28"');
  const compared = await compareNewest(flow, 'bow-label');
  expect(compared).toMatchObject({
    outcome: 'unmade',
    sentence: expect.stringContaining('Nothing to letter yet'),
  });
});

test('the lettering guide is found by its number, and tells who approved the lines', async () => {
  const shop = await testShop();
  const flow = await lettered(shop);
  await flow.grant('marking-approval');
  const bytes = await print(flow, { ...label, format: 'letter' } as never);
  expect(await textOf(bytes)).toContain('Approved word for word by Nora Hale on 2026-03-02.');
  const [page] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  const { number } = (await flow.order()).card;
  expect((await decode(page)).map(({ text }) => text)).toEqual([number]);
});

test('a form about one question is reprinted from the list about the same one', async () => {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  const price = await flow.ask('price-and-scope');
  await print(flow, consent, price.id);
  const altered = await flow.ask('alteration-acknowledgement');
  await print(flow, consent, altered.id);
  const { papers } = await listPapers(shop.owner, all);
  expect(papers.map(({ aboutId }) => aboutId)).toEqual([altered.id, price.id]);
  const [, first] = papers;
  if (first === undefined) throw new Error('no paper');
  // As the screen reprints: everything but the action comes from the row.
  const { kind, format, copy, orderId, aboutId } = first;
  const again = await issuePaper(shop.owner, {
    commandId: newCommandId(),
    kind,
    format,
    copy,
    orderId,
    aboutId,
    action: 'printed',
  });
  expect(await textOf(new Uint8Array(await again.arrayBuffer()))).toContain('Price and scope');
  expect((await paperLines(flow)).at(-1)).toContain('again: as the one of');
  await flow.answer(price, 'granted');
  expect(await comparePaper(shop.owner, { id: first.id })).toMatchObject({ outcome: 'differs' });
  expect(await comparePaper(shop.owner, { id: papers[0]?.id ?? '' })).toEqual({ outcome: 'same' });
});
