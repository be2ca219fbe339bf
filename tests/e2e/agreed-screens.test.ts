import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { longSettings, orderMuchAgreed } from './agreed-behind.ts';
import { AgreementDriver } from './agreement-driver.ts';
import { openShop } from './open-shop.ts';
import { expect as see } from './page.ts';
import { PriceDriver } from './price-driver.ts';
import { expectReadable, twoLooks } from './readable.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let agree: AgreementDriver;
let price: PriceDriver;
let id: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  agree = new AgreementDriver(session.page);
  price = new PriceDriver(session.page);
  id = await orderMuchAgreed(client);
  await longSettings(client);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const press = (section: string, name: string | RegExp) => async () => {
  await agree.unfold(section);
  await agree.section(section).getByRole('button', { name }).first().click();
};

const inDialog = { looks: twoLooks, within: '[role="dialog"]' };
const inForms = { looks: twoLooks, within: 'main form' };

const onTheOrder: [string, typeof inDialog, () => Promise<void>][] = [
  ['question to the customer', inDialog, press('Consents', 'Ask the customer')],
  ['message', inDialog, press('Messages', 'Write a message')],
  ['lines to be written', inForms, press('To be written on the bow', 'Change the lines')],
  ['where and how', inForms, press('To be written on the bow', 'Change where and how')],
];

describe('much that is agreed, asked, priced and paid, with words as long as they get', () => {
  test('the order with every section open', async () => {
    const prepare = async () => {
      for (const section of ['Consents', 'Messages', 'To be written on the bow', 'Price']) {
        await agree.unfold(section);
      }
      await see(agree.section('Messages').getByText('What it said')).toBeVisible();
    };
    await expectReadable(session, 'order much agreed', `orders/${id}`, { prepare });
  });

  test.each(onTheOrder)('%s', async (name, where, prepare) => {
    await expectReadable(session, name, `orders/${id}`, { ...where, prepare });
  });

  test('an answer in person that says nothing yet, with what is wrong beside it', async () => {
    const prepare = async () => {
      await agree.unfold('Consents');
      const dialog = await agree.openAnswer('Marking approval', { answer: 'Granted' });
      await agree.choose('How the answer came', 'In person');
      await dialog.getByRole('button', { name: 'Record the answer' }).click();
      await see(dialog.getByRole('alert')).toBeVisible();
    };
    await expectReadable(session, 'answer', `orders/${id}`, { ...inDialog, prepare });
  });

  test('a line changed, a discount and a payment, all open at once', async () => {
    const prepare = async () => {
      await agree.unfold('Price');
      await price.edit('Rush fee', 'Change the line');
      await price.open('Discount', 'Add a discount', {});
      await price.open('Record a payment', 'Record a payment', {});
    };
    await expectReadable(session, 'price forms', `orders/${id}`, { ...inForms, prepare });
  });

  test('what may be done with a line of the price', async () => {
    const prepare = async () => {
      await agree.unfold('Price');
      await price.menu('Return freight');
      // The ground of the item under the pointer is another one.
      await session.page.getByRole('menuitem', { name: 'Move it up' }).hover();
    };
    const inMenu = { looks: twoLooks, within: '[role="menu"]' };
    await expectReadable(session, 'price menu', `orders/${id}`, { ...inMenu, prepare });
  });

  test('the bow with every field open', async () => {
    const { page } = session;
    const { bowId } = (await client.orders.get({ id })).card;
    const prepare = async () => {
      await page.getByRole('main').getByRole('button', { name: 'Change', exact: true }).click();
      const folded = page.locator('form details:not([open]) > summary');
      while ((await folded.count()) > 0) await folded.first().click();
      await see(page.getByLabel('Lowest brace height, inches')).toBeVisible();
      await see(page.getByRole('combobox', { name: 'Wood or horn of a listed' })).toBeVisible();
    };
    await expectReadable(session, 'bow form', `bows/${bowId}`, { ...inForms, prepare });
  });
});

describe('what the shop sets for itself', () => {
  test.each(['bench', 'marking', 'care', 'prices', 'wordings'])('settings, %s', async (tab) => {
    await expectReadable(session, `settings ${tab}`, `settings?tab=${tab}`, { looks: twoLooks });
  });

  test('a wording of three thousand letters', async () => {
    const prepare = async () => {
      await session.page
        .getByRole('button', { name: /^Change / })
        .first()
        .click();
      const preview = session.page.getByRole('region', { name: /^Preview/ });
      await see(preview).toContainText('We plane, scrape and sand');
    };
    const where = { ...inDialog, prepare };
    await expectReadable(session, 'wording dialog', 'settings?tab=wordings', where);
  });

  test('a service with a long name', async () => {
    const prepare = async () => {
      await session.page
        .getByRole('button', { name: /^Change / })
        .last()
        .click();
      await see(session.page.getByLabel('Price, dollars')).toBeVisible();
    };
    const where = { ...inDialog, prepare };
    await expectReadable(session, 'service dialog', 'settings?tab=prices', where);
  });
});

test('no screen threw an error that nobody caught', () => {
  expect(session.troubles()).toEqual([]);
});
