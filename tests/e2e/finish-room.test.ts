import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { pagesOf, placedText } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { addedBehind, bowInFinish, dayMs, hourMs, localDay, minuteMs } from './finish-behind.ts';
import { FinishRoomDriver } from './finish-room-driver.ts';
import { FinishSheetDriver } from './finish-sheet-driver.ts';
import { openShop } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { expectReadable, twoLooks } from './readable.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let hale: { id: string; number: string };
let brand: { id: string; number: string };
const parts = {
  'Hard clear, resin': { category: 'finish', lot: 'R-118' },
  'Hard clear, hardener': { category: 'hardener', lot: 'H-31' },
  'Slow thinner': { category: 'thinner', lot: 'T-4' },
} as const;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  hale = await bowInFinish(client, 'Nora Hale');
  brand = await bowInFinish(client, 'Odo Brand');
  for (const [name, { category }] of Object.entries(parts)) {
    await addedBehind(client, { name, category });
  }
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const room = () => new FinishRoomDriver(session.page);
const order = () => new OrderDriver(session.page);

async function inTheRoom(): Promise<FinishRoomDriver> {
  await session.page.goto(session.at('finish-room'));
  await see(session.page.getByRole('heading', { name: 'Finish room', level: 1 })).toBeVisible();
  return room();
}

async function onHand(name: string): Promise<number> {
  const { consumables } = await client.stores.list();
  return consumables.find((each) => each.name === name)?.onHand ?? Number.NaN;
}

test('lots come into the stores with their last days', async () => {
  const { page } = session;
  for (const [name, { lot }] of Object.entries(parts)) {
    await page.goto(session.at('stores'));
    await page
      .getByRole('link', { name: new RegExp(name) })
      .first()
      .click();
    await page.getByRole('button', { name: 'Receive', exact: true }).click();
    const form = page.getByRole('form', { name: `Receive ${name}` });
    await form.getByLabel(/^In each container/).fill('946');
    await form.getByLabel('Lot number').fill(lot);
    await form.getByLabel('Use by').fill(localDay(Date.now() + 200 * dayMs));
    await form.getByRole('button', { name: 'Receive', exact: true }).click();
    await see(form).toBeHidden();
    expect(await onHand(name)).toBe(946);
  }
});

test('a finish is copied from its data sheet; what is missing is named', async () => {
  const { page } = session;
  await page.goto(session.at('settings?tab=finishes'));
  await see(page.getByText('No finish yet')).toBeVisible();
  await page.getByRole('button', { name: 'Add a finish' }).click();
  const sheet = new FinishSheetDriver(page);
  await sheet.copyAlmostAll();
  await sheet.add();
  await see(sheet.form.getByLabel('Parts of hardener')).toHaveAttribute('aria-invalid', 'true');
  await sheet.fill('Parts of hardener', '0');
  await see(
    sheet.form.getByText('A two-part finish needs its parts of hardener.').first(),
  ).toBeVisible();
  await session.accessible('a sheet with a mistake');
  await sheet.fill('Parts of hardener', '1');
  await sheet.add();
  await sheet.isAdded();
  await see(page.getByRole('article', { name: 'Hard clear' })).toContainText('4:1 by volume');
});

test('each bow gets its finish, on its own page or in the finish room', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${hale.id}?open=finish:finish-system`));
  await page.getByRole('button', { name: 'Choose this finish' }).click();
  const section = page.getByRole('region', { name: 'Finish', exact: true });
  await see(section).toContainText('Hard clear, data sheet C of 1 Mar');
  await see(section.getByRole('list', { name: 'Cautions' })).toContainText('isocyanates');
  const there = await inTheRoom();
  await page.getByRole('button', { name: `Choose the finish of ${brand.number}` }).click();
  await page.getByRole('button', { name: 'Choose this finish' }).click();
  await see(there.panel('Coats due')).not.toContainText('No finish chosen.');
});

test('one cup, two bows, one entry: written down five days later', async () => {
  const there = await inTheRoom();
  await there.typeAir({ airF: 70, humidity: 45, surfaceF: 68 });
  const air = there.form('Read the air');
  await see(air.getByRole('img', { name: /dew point 47.7 F/ })).toBeVisible();
  await see(air).toContainText('A coat of Hard clear may go on.');
  await there.earlier('Read the air', 5 * dayMs);
  await there.recordAir();
  await there.typeMix(110);
  const mix = there.form('Mix a batch');
  await see(mix.getByRole('list', { name: 'Lots that are issued' })).toContainText(
    'lot H-31, 20 mL',
  );
  await see(mix.getByRole('table')).toContainText('22.2 g');
  await there.earlier('Mix a batch', 5 * dayMs - 30 * minuteMs);
  await there.mix();
  expect(await onHand('Hard clear, resin')).toBe(946 - 80);
  expect(await onHand('Slow thinner')).toBe(946 - 10);
  await there.typeCoat(/Usable for 1 h 30 min/, [hale.number, brand.number], 5 * dayMs - hourMs);
  await see(there.form('Coat bows')).toContainText('Rack: 2 of');
  await see(there.form('Coat bows')).not.toContainText('No coat like this');
  await there.recordCoat();
  await see(
    session.page.getByRole('status').filter({ hasText: 'recorded on 2 bows' }),
  ).toBeVisible();
  const { coats } = await client.finish.order({ orderId: brand.id });
  expect(coats).toMatchObject([{ purpose: 'clear', coats: 1, wetMil: 3 }]);
});

test('the final check opens when the time to string and flex is up, and the card tells the days', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${hale.id}`));
  await order().move('Cure');
  await order().standsIn('Cure');
  await order().move('Final check');
  await order().standsIn('Final check');
  const card = await client.papers.preview({
    kind: 'care-card',
    format: 'letter',
    copy: 'customer',
    orderId: hale.id,
    aboutId: null,
  });
  const pages = await pagesOf(new Uint8Array(await card.arrayBuffer()));
  const words = (await Promise.all(pages.map(placedText))).flat().map(({ text }) => text);
  const { lastCoatAt } = await client.finish.order({ orderId: hale.id });
  // The first whole day after the hour.
  const dayAfter = (hours: number) =>
    localDay(Date.parse(lastCoatAt ?? '') + hours * hourMs + dayMs);
  expect(words.join(' ')).toContain(dayAfter(96));
  expect(words.join(' ')).toContain(dayAfter(168));
});

test('what is worked out comes late and pushes no button away from under the hand', async () => {
  const { page } = session;
  const there = await inTheRoom();
  let isHeld = true;
  await page.route(/lookAtAir|planMix/, async (route) => {
    while (isHeld) await new Promise((resolve) => setTimeout(resolve, 50));
    await route.continue();
  });
  const standsStill = async (form: string, button: string) => {
    const place = () => there.form(form).getByRole('button', { name: button }).boundingBox();
    const answer = there.form(form).locator('[aria-busy]');
    isHeld = true;
    if (form === 'Read the air') await there.typeAir({ airF: 70, humidity: 45, surfaceF: 68 });
    else await there.typeMix(110);
    const before = await place();
    isHeld = false;
    await there.answered(form);
    expect((await answer.boundingBox())?.height ?? 0).toBeGreaterThan(60);
    expect(await place()).toEqual(before);
    await there.form(form).getByRole('button', { name: 'Cancel' }).click();
  };
  await standsStill('Read the air', 'Record the air');
  await standsStill('Mix a batch', 'Mix, issue, start the clock');
  await page.unrouteAll({ behavior: 'wait' });
});

test('wet air and an expired pot life refuse the coat, each in its own words', async () => {
  const there = await inTheRoom();
  await there.typeAir({ airF: 62, humidity: 85, surfaceF: 60 });
  await see(there.form('Read the air')).toContainText('No coat in this air.');
  await see(there.form('Read the air')).toContainText('over 70 percent on the sheet');
  await there.recordAir();
  await there.typeMix(55);
  await there.earlier('Mix a batch', 3 * hourMs);
  await there.mix();
  await there.typeCoat(/Pot life past/, [brand.number]);
  const form = there.form('Coat bows');
  await form.getByRole('checkbox', { name: /film was scuffed/ }).check();
  await see(form.getByRole('alert')).toContainText('pot life');
  await see(form.getByRole('alert')).toContainText('Humidity is 85 percent');
  await session.accessible('a coat that is refused');
  await form.getByRole('button', { name: 'Record the coat', exact: true }).click();
  await see(form.getByRole('alert')).toContainText('pot life');
  expect((await client.finish.order({ orderId: brand.id })).coats).toHaveLength(1);
  await form.getByRole('button', { name: 'Cancel' }).click();
  await there
    .panel('Batches')
    .getByRole('button', { name: /^Discard/ })
    .click();
  await there.panel('Batches').getByLabel('Why?').fill('gone off');
  await there.panel('Batches').getByRole('button', { name: 'Discard it' }).click();
  await see(there.panel('Batches')).not.toContainText('Pot life past');
});

test('a fresh cup starts its clock, which ticks without a call and survives a reload', async () => {
  const { page } = session;
  const there = await inTheRoom();
  await there.typeAir({ airF: 70, humidity: 45, surfaceF: 68 });
  await there.recordAir();
  await there.typeMix(55);
  await there.earlier('Mix a batch', 70 * minuteMs);
  await there.mix();
  await there
    .panel('Batches')
    .getByRole('button', { name: /^Mix card/ })
    .first()
    .click();
  const card = page.getByRole('dialog', { name: /^Mix card/ });
  await see(card.getByRole('button', { name: 'Print' })).toBeEnabled();
  await card.getByRole('button', { name: 'Close' }).click();
  await session.picture('finish-room');
  const clock = there.clocks.getByText(/^Pot life ends in \d+ min \d\d s$/);
  await see(clock).toBeVisible();
  await page.goto(session.at('board'));
  await see(clock).toBeVisible();
  await page.waitForTimeout(1500);
  let calls = 0;
  page.on('request', () => {
    calls += 1;
  });
  const before = (await clock.textContent()) ?? '';
  await see(clock).not.toHaveText(before);
  expect(calls).toBe(0);
  await session.restart('SIGKILL');
  await see(clock).toBeVisible();
});

test('a coat starts the times again: the final check is shut until they are up', async () => {
  const { page } = session;
  const there = await inTheRoom();
  await there.typeCoat(/Usable for/, [brand.number]);
  const form = there.form('Coat bows');
  await see(form.getByRole('alert')).toContainText('Scuff the film');
  await form.getByRole('checkbox', { name: /film was scuffed/ }).check();
  await see(form.getByRole('alert')).toHaveCount(0);
  await there.recordCoat();
  await see(there.clocks).toContainText(brand.number);
  await page.goto(session.at(`orders/${brand.id}`));
  await order().move('Cure');
  await order().standsIn('Cure');
  expect((await order().missing()).join(' ')).toMatch(/string/i);
  await page.goto(session.at('board'));
  await see(page.getByRole('article', { name: new RegExp(brand.number) })).toContainText(
    /Dry to handle in 1[12] h/,
  );
});

test('the room at work is readable everywhere', async () => {
  await bowInFinish(client, 'Maximiliane-Theodora van der Hoogenboom-Sørensen zu Unter-Oberhausen');
  await expectReadable(session, 'finish room at work', 'finish-room');
});

test.each(['Coat bows', 'Mix a batch', 'Record sanding', 'Read the air'])(
  'its form is readable: %s',
  async (name) => {
    const open = session.page.getByRole('button', { name, exact: true });
    await expectReadable(session, `finish room: ${name}`, 'finish-room', {
      looks: twoLooks,
      within: 'main',
      prepare: () => open.click(),
    });
  },
);

test('the finish log, a data sheet and the bench under the clocks are readable', async () => {
  const { page } = session;
  await expectReadable(session, 'bench with clocks', 'bench', { looks: twoLooks });
  await see(room().clocks).toBeVisible();
  await expectReadable(session, 'finish log', `orders/${brand.id}?open=finish`, {
    looks: twoLooks,
    within: '#order-finish',
  });
  await expectReadable(session, 'a data sheet', 'settings?tab=finishes', {
    looks: twoLooks,
    within: '[role=dialog]',
    prepare: async () => {
      await page.getByRole('button', { name: 'Change Hard clear' }).click();
      await see(page.getByLabel('Parts of hardener')).toBeVisible();
    },
  });
  expect(session.troubles()).toEqual([]);
});
